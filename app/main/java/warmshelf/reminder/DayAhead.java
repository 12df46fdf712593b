package warmshelf.reminder;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.check.HeldRack;
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
 */
record DayAhead(
        LocalDate day,
        boolean tomorrow,
        List<String> duties,
        int looks,
        List<StepAhead> steps,
        List<NotedProblem> problems,
        List<HeldRack> held) {
    private static final int BRIEFLY = 3;

    static DayAhead of(
            LocalDate day,
            boolean tomorrow,
            List<String> duties,
            int looks,
            List<StepAhead> ahead,
            List<NotedProblem> problems,
            List<HeldRack> held) {
        Set<UUID> dueToday = ahead.stream()
                .filter(step -> step.ideal().equals(day))
                .map(StepAhead::sowing)
                .collect(Collectors.toSet());
        // What was passed over is not told beside what comes after it: who sows today does not soak any more.
        List<StepAhead> due = ahead.stream()
                .filter(step -> step.ideal().equals(day)
                        || (step.next() && step.ideal().isBefore(day) && !dueToday.contains(step.sowing())))
                .toList();
        return new DayAhead(day, tomorrow, duties, looks, due, problems, held);
    }

    /** With nothing to say nobody is written to. */
    boolean isEmpty() {
        return duties.isEmpty() && looks == 0 && steps.isEmpty() && problems.isEmpty() && held.isEmpty();
    }

    /** For example 'Today: you look at the Hall cellar; 2 things to do'. */
    String subject() {
        List<String> parts = new ArrayList<>();
        held.forEach(rack -> parts.add("rack " + rack.rack() + " is held"));
        if (!problems.isEmpty()) {
            parts.add(problems.size() == 1 ? "a problem was noted" : problems.size() + " problems were noted");
        }
        if (!duties.isEmpty()) {
            parts.add("you look at " + Counted.all(duties));
        }
        if (!steps.isEmpty()) {
            parts.add(Counted.of(steps.size(), "thing to do", "things to do"));
        }
        if (parts.isEmpty()) {
            parts.add(Counted.of(looks, "sowing wants a look", "sowings want a look"));
        }
        return (tomorrow ? "Tomorrow: " : "Today: ") + String.join("; ", parts);
    }

    /** For a lock screen, for example 'Pepper: too dry. Tomato: Pot on.'; of a sowing its crop only. */
    String brief() {
        List<String> parts = new ArrayList<>();
        held.forEach(rack -> parts.add(
                "Rack %s: %s.".formatted(rack.rack(), rack.first().problem().words())));
        problems.forEach(noted -> parts.add("%s: %s."
                .formatted(noted.sowing().crop().name(), noted.problem().words())));
        steps.forEach(
                step -> parts.add("%s: %s.".formatted(step.crop(), step.step().title())));
        String more = parts.size() > BRIEFLY ? " And %d more.".formatted(parts.size() - BRIEFLY) : "";
        return String.join(" ", parts.subList(0, Math.min(BRIEFLY, parts.size()))) + more;
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
                "Hello %s,\n\n%s, %s:\n".formatted(name, tomorrow ? "tomorrow" : "today", DayWords.day(day)));
        held.forEach(rack -> words.append(words(rack, address)));
        for (NotedProblem noted : problems) {
            words.append(words(noted, address));
        }
        for (String site : duties) {
            words.append("\n* You look at %s. The round: %s/today?show=all\n".formatted(site, address));
        }
        if (looks > 0) {
            words.append("\n* %s a look: %s/today?show=mine\n"
                    .formatted(Counted.of(looks, "of your sowings wants", "of your sowings want"), address));
        }
        for (StepAhead step : steps) {
            String late = step.ideal().isBefore(day) ? " (since %s)".formatted(DayWords.day(step.ideal())) : "";
            words.append("\n* %s: %s%s. %s\n  %s/sowings/%s\n"
                    .formatted(step.title(), step.step().title(), late, step.why(), address, step.sowing()));
        }
        words.append(
                "\n%s\nTo change when you are written to, or stop it: %s/reminders\n".formatted(groupName, address));
        return words.toString();
    }

    private static String words(HeldRack rack, String address) {
        HeldRack.Note first = rack.first();
        return "\n* Rack %s is held: %s, found on %s by %s on %s.\n  Look under the leaves of yours. Nothing moves from it to another rack until a coordinator clears it.\n  What to do: %s/how-to/pests\n"
                .formatted(
                        rack.rack(),
                        first.problem().words(),
                        first.title(),
                        first.byName(),
                        DayWords.day(first.seenOn()),
                        address);
    }

    private static String words(NotedProblem noted, String address) {
        Entry entry = noted.entry();
        return "\n* %s: %s, noted by %s on %s%s\n  %s\n  To answer it: %s/sowings/%s\n"
                .formatted(
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
