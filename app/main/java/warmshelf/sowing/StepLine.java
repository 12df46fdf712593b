package warmshelf.sowing;

import java.util.List;
import warmshelf.crop.CropCatalogue;
import warmshelf.timeline.Advisor;
import warmshelf.timeline.StepAdvice;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.web.Units;

/** A step of the timeline with how it is done, as a page lists them. */
public record StepLine(TimelineStep step, StepAdvice advice) {
    static List<StepLine> of(Timeline timeline, Asking asking, boolean treated, CropCatalogue crops, Units units) {
        Advisor advisor = new Advisor(
                asking.crop(),
                asking.method(),
                crops.responseOf(asking.crop()).comfortable(),
                treated,
                new ReaderMeasures(units));
        return timeline.steps().stream()
                .map(step -> new StepLine(step, advisor.on(step.step())))
                .toList();
    }
}
