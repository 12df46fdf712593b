package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.check.HeldRack;
import warmshelf.news.NewsLine;
import warmshelf.sowing.Entry;
import warmshelf.sowing.NotedProblem;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/**
 * What one person is told of one day.
 *
 * @param tomorrow told the evening before
 * @param duties the sites at which they look
 * @param looks their own sowings that want a look; not known the evening before, then 0
 * @param steps due on that day; of sowings that have none, the next one if it is overdue
 * @param problems noted at their sowings and not answered; told in the morning only
 * @param held racks that are held, where something of theirs lies or is to come; told in the morning only
 * @param news what else is new since the last morning; told in the morning only
 */
record DayAhead(
        LocalDate day,
        boolean tomorrow,
        List<String> duties,
        int looks,
        List<StepAhead> steps,
        List<NotedProblem> problems,
        List<HeldRack> held,
        List<NewsLine> news) {
    private static final int BRIEFLY = 3;

    static DayAhead of(
            LocalDate day,
            boolean tomorrow,
            List<String> duties,
            int looks,
            List<StepAhead> ahead,
            List<NotedProblem> problems,
            List<HeldRack> held,
            List<NewsLine> news) {
        Set<UUID> dueToday = ahead.stream()
                .filter(step -> step.ideal().equals(day))
                .map(StepAhead::sowing)
                .collect(Collectors.toSet());
        // What was passed over is not told beside what comes after it: who sows today does not soak any more.
        List<StepAhead> due = ahead.stream()
                .filter(step -> step.ideal().equals(day)
                        || (step.next() && step.ideal().isBefore(day) && !dueToday.contains(step.sowing())))
                .toList();
        return new DayAhead(day, tomorrow, duties, looks, due, problems, held, news);
    }

    /** With nothing to say nobody is written to. */
    boolean isEmpty() {
        return duties.isEmpty()
                && looks == 0
                && steps.isEmpty()
                && problems.isEmpty()
                && held.isEmpty()
                && news.isEmpty();
    }

    /** For example 'Today: you look at the Hall cellar; 2 things to do'. */
    String subject() {
        List<String> parts = new ArrayList<>();
        held.forEach(rack -> parts.add(SAY.rackHeld(rack.rack())));
        if (!problems.isEmpty()) {
            parts.add(SAY.problemsNoted(problems.size()));
        }
        if (!duties.isEmpty()) {
            parts.add(SAY.youLookAt(Counted.all(duties)));
        }
        if (!steps.isEmpty()) {
            parts.add(SAY.thingsToDo(steps.size()));
        }
        if (!news.isEmpty()) {
            parts.add(SAY.newThings(news.size()));
        }
        if (parts.isEmpty()) {
            parts.add(SAY.sowingsToLookAt(looks));
        }
        return tomorrow ? SAY.tomorrowSubject(String.join("; ", parts)) : SAY.todaySubject(String.join("; ", parts));
    }

    /** For a lock screen, for example 'Pepper: too dry. Tomato: Pot on.'; of a sowing its crop only. */
    String brief() {
        List<String> parts = new ArrayList<>();
        held.forEach(rack ->
                parts.add(SAY.rackLine(rack.rack(), rack.first().problem().words())));
        problems.forEach(noted -> parts.add("%s: %s."
                .formatted(noted.sowing().crop().name(), noted.problem().words())));
        steps.forEach(
                step -> parts.add("%s: %s.".formatted(step.crop(), step.step().title())));
        if (!news.isEmpty()) {
            parts.add(SAY.newThings(news.size()) + ".");
        }
        String first = String.join(" ", parts.subList(0, Math.min(BRIEFLY, parts.size())));
        return parts.size() > BRIEFLY ? first + " " + SAY.andMore(parts.size() - BRIEFLY) : first;
    }

    /** The page that shows it. */
    String path() {
        if (!duties.isEmpty()) {
            return tomorrow ? "/duty" : "/today?show=all";
        }
        return tomorrow ? "/sowings" : "/today?show=mine";
    }

    /** The letter in plain text. */
    String words(String name, String groupName, String address) {
        StringBuilder words = new StringBuilder(
                tomorrow ? SAY.helloTomorrow(name, DayWords.day(day)) : SAY.helloToday(name, DayWords.day(day)));
        held.forEach(rack -> words.append(words(rack, address)));
        for (NotedProblem noted : problems) {
            words.append(words(noted, address));
        }
        for (NewsLine line : news) {
            words.append(SAY.newLine(line.words(), address, line.address()));
        }
        for (String site : duties) {
            words.append(SAY.lookAtSite(site, address));
        }
        if (looks > 0) {
            words.append(SAY.yourSowingsWantALook(looks, address));
        }
        for (StepAhead step : steps) {
            String late = step.ideal().isBefore(day) ? SAY.lateSince(DayWords.day(step.ideal())) : "";
            words.append(SAY.stepToDo(step.title(), step.step().title(), late, step.why(), address, step.sowing()));
        }
        words.append(SAY.letterEnd(groupName, address));
        return words.toString();
    }

    private static String words(HeldRack rack, String address) {
        HeldRack.Note first = rack.first();
        return SAY.rackIsHeld(
                rack.rack(),
                first.problem().words(),
                first.title(),
                first.byName(),
                DayWords.day(first.seenOn()),
                address);
    }

    private static String words(NotedProblem noted, String address) {
        Entry entry = noted.entry();
        return SAY.problemNoted(
                noted.sowing().title(),
                noted.problem().words(),
                entry.byName(),
                DayWords.day(entry.seenOn()),
                entry.note().isEmpty() ? "." : ": " + entry.note(),
                noted.problem().whatToDo(),
                address,
                noted.sowing().id());
    }
}
