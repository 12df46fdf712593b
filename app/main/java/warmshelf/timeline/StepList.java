package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.guide.Advice;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** Collects the steps in order and keeps their days from going back. */
final class StepList {
    private final List<TimelineStep> steps = new ArrayList<>();
    private final Units units;

    StepList(Units units) {
        this.units = units;
    }

    /**
     * Adds a step. One that was seen makes unrecorded steps before it history: they are left out. One that was not seen
     * starts no earlier than the step before it.
     */
    void add(Step step, DateWindow window, Reason reason, @Nullable LocalDate done) {
        if (done != null) {
            steps.removeIf(earlier -> earlier.done() == null);
            steps.add(new TimelineStep(step, done, done, done, happened(step, done), done));
            return;
        }
        DateWindow kept = window;
        if (!steps.isEmpty()) {
            TimelineStep last = steps.get(steps.size() - 1);
            kept = window.notBefore(new DateWindow(last.earliest(), last.ideal(), last.latest()));
        }
        steps.add(new TimelineStep(step, kept.earliest(), kept.ideal(), kept.latest(), reason, null));
    }

    List<TimelineStep> steps() {
        return steps;
    }

    private Reason happened(Step step, LocalDate day) {
        return new Reason(
                Advice.stepFile("any"),
                "why it is done",
                Map.of("title", step.title(), "day", DayWords.dayOfMonth(day)),
                units);
    }
}
