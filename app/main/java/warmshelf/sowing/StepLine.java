package warmshelf.sowing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.CropHazard;
import warmshelf.crop.HeatNeed;
import warmshelf.timeline.Advisor;
import warmshelf.timeline.Caution;
import warmshelf.timeline.StepAdvice;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.words.Units;

/**
 * A step of the timeline with how it is done, as a page lists them.
 *
 * @param open cautions of skin, eyes, poison and electricity, which stand at the step itself: the whole where each is due for the
 *     first time, one line of it from then on
 * @param folded the other cautions
 */
public record StepLine(TimelineStep step, StepAdvice advice, List<Open> open, List<String> folded) {
    public StepLine {
        open = List.copyOf(open);
        folded = List.copyOf(folded);
    }

    /**
     * One of them.
     *
     * @param whole whether these are all of its words, rather than one line
     */
    public record Open(String words, boolean whole) {}

    static List<StepLine> of(
            Timeline timeline, Asking asking, Set<CropHazard> hazards, CropCatalogue crops, Units units) {
        Advisor advisor = new Advisor(
                asking.crop(),
                asking.method(),
                HeatNeed.onMat(asking.crop(), crops.responseOf(asking.crop())),
                hazards,
                units);
        Set<Caution> said = EnumSet.noneOf(Caution.class);
        List<StepLine> lines = new ArrayList<>();
        for (TimelineStep step : timeline.steps()) {
            lines.add(of(step, advisor.on(step.step()), said));
        }
        return lines;
    }

    private static StepLine of(TimelineStep step, StepAdvice advice, Set<Caution> said) {
        if (step.done() != null) {
            return new StepLine(step, advice, List.of(), List.of());
        }
        List<Open> open = new ArrayList<>();
        List<String> folded = new ArrayList<>();
        for (Caution caution : advice.cautions()) {
            if (caution.standsOpen()) {
                boolean whole = !caution.briefIsEnough() && said.add(caution);
                open.add(new Open(whole ? caution.sentence() : caution.brief(), whole));
            }
            if (!caution.standsOpen() || caution.briefIsEnough()) {
                folded.add(caution.sentence());
            }
        }
        return new StepLine(step, advice, open, folded);
    }
}
