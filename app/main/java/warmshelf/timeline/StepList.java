package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects the steps in order and keeps their days from going back. */
final class StepList {
    private final List<TimelineStep> steps = new ArrayList<>();

    /**
     * Adds a step. One that was seen makes unrecorded steps before it history: they are left out. One that was not seen
     * starts no earlier than the step before it.
     */
    void add(Step step, DateWindow window, String why, @Nullable LocalDate done) {
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
        steps.add(new TimelineStep(step, kept.earliest(), kept.ideal(), kept.latest(), why, null));
    }

    List<TimelineStep> steps() {
        return steps;
    }

    private static String happened(Step step, LocalDate day) {
        return "%s: done on %s. Later steps count from there.".formatted(step.title(), TimelineWords.day(day));
    }
}
