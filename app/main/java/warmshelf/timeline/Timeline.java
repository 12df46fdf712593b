package warmshelf.timeline;

import java.util.List;
import java.util.Optional;
import warmshelf.crop.RaisedFrom;
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

    /** What else the grower should know, in plain sentences. */
    public List<String> noteWords(Units units) {
        return notes.stream().map(note -> note.words(units)).toList();
    }

    /** The step, where this timeline has it. */
    public Optional<TimelineStep> step(Step wanted) {
        return steps.stream().filter(step -> step.step() == wanted).findFirst();
    }
}
