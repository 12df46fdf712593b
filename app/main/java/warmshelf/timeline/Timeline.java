package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.RaisedFrom;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/**
 * The steps of one sowing counted back from planting out, and forward again from what was really seen.
 *
 * @param steps in order; earliest, ideal and latest days never go back from one step to the next. Optional steps that were
 *     passed over, and steps for which the season leaves no time, are not listed
 * @param warmDays whole days the sowing needs on a mat; 0 where it needs none, or cannot come up at that temperature
 * @param notes what else the grower should know
 * @param harvest how much of it comes before the autumn frost that ends it; empty where that cannot be told
 * @param quickest the same of the quickest kinds, where the usual ones are not sure to ripen and quicker ones are known
 * @param outside where the crop is better sown than in a tray; empty where its roots may be moved, and once it is sown
 */
public record Timeline(
        Verdict verdict,
        List<TimelineStep> steps,
        int warmDays,
        List<TimelineNote> notes,
        Optional<HarvestOutlook> harvest,
        Optional<QuickestKinds> quickest,
        SeasonFacts season,
        Optional<SowingOutside> outside) {
    public Timeline {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    public static Timeline plan(TimelineQuestion question) {
        return question.crop().raisedFrom() == RaisedFrom.SLIPS
                        && question.seen().sown() == null
                ? new SlipsPlan(question).timeline()
                : new TimelinePlan(question).timeline();
    }

    /**
     * The same where it goes home after the heat, in place of a light of the group's.
     *
     * @param by the last day on which it can lie on its mat
     * @param done the day on which it was taken home; null: not yet
     */
    public Timeline goingHome(LocalDate by, @Nullable LocalDate done, Units units) {
        Optional<TimelineStep> off = step(Step.OFF_HEAT);
        if (off.isEmpty()) {
            return this;
        }
        LocalDate day = done == null ? by : done;
        LocalDate earliest = DateWindow.earlier(off.get().earliest(), day);
        Reason why = Step.TAKE_HOME.why("why", Map.of("by", DayWords.day(day)), units);
        List<TimelineStep> all = new ArrayList<>(steps.stream()
                .filter(step -> step.step() != Step.OFF_HEAT && step.step() != Step.LIGHT)
                .toList());
        int at = (int) all.stream()
                .takeWhile(step -> step.step().compareTo(Step.TAKE_HOME) < 0
                        || (done == null && step.ideal().isBefore(day)))
                .count();
        all.add(at, new TimelineStep(Step.TAKE_HOME, done == null ? earliest : day, day, day, why, done));
        return new Timeline(verdict, all, warmDays, notes, harvest, quickest, season, outside);
    }

    /** What else the grower should know, in plain sentences. */
    public List<String> noteWords(Units units) {
        return notes.stream().map(note -> note.words(units)).toList();
    }

    /** The step, where this timeline has it. */
    public Optional<TimelineStep> step(Step wanted) {
        return steps.stream().filter(step -> step.step() == wanted).findFirst();
    }
}
