package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * A sowing as the picture of a season has it.
 *
 * @param warm whether it was to lie on a mat
 * @param celsius the temperature its dates are reckoned at
 */
public record Growing(UUID id, String crop, String variety, boolean warm, int celsius, Timeline timeline) {
    /** So many days are drawn of the last place, where plants stay: out, in a season that leaves time for it. */
    private static final int DAYS_OF_LAST = 14;

    /**
     * A run of days in one place: from a day up to the day of the next.
     *
     * @param open it goes on after that day
     */
    record Stretch(Phase phase, LocalDate from, LocalDate to, boolean open) {}

    /** Where it is from sowing on, without gaps. Nothing that lasts no day is listed. */
    List<Stretch> stretches() {
        List<Begin> begins = begins();
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < begins.size(); i++) {
            Begin begin = begins.get(i);
            boolean last = i + 1 == begins.size();
            LocalDate to = last
                    ? begin.day().plusDays(DAYS_OF_LAST)
                    : begins.get(i + 1).day();
            if (begin.day().isBefore(to)) {
                stretches.add(new Stretch(begin.phase(), begin.day(), to, last));
            }
        }
        return stretches;
    }

    private record Begin(Phase phase, LocalDate day) {}

    private List<Begin> begins() {
        List<Begin> begins = new ArrayList<>();
        day(Step.SOW).ifPresent(day -> begins.add(new Begin(warm ? Phase.HEAT : Phase.ROOM, day)));
        if (warm) {
            day(Step.OFF_HEAT).ifPresent(day -> begins.add(new Begin(Phase.ROOM, day)));
        }
        // What is fed or potted on stands under a light, even where nobody noted when it was put there.
        Stream.of(Step.LIGHT, Step.FIRST_FEED, Step.POT_ON)
                .map(this::day)
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(day -> begins.add(new Begin(Phase.LIGHT, day)));
        day(Step.HARDEN_OFF).ifPresent(day -> begins.add(new Begin(Phase.HARDENING, day)));
        day(Step.PLANT_OUT).ifPresent(day -> begins.add(new Begin(Phase.OUT, day)));
        return begins;
    }

    /** The steps the picture marks; the harvest lies far beyond it. */
    List<TimelineStep> marked() {
        return timeline.steps().stream()
                .filter(step -> step.step() != Step.RIPE)
                .toList();
    }

    /** The first step that is not done; empty when all are. */
    Optional<TimelineStep> next() {
        return marked().stream().filter(step -> step.done() == null).findFirst();
    }

    /** The first day there is anything to draw of; empty where the season leaves no time at all. */
    Optional<LocalDate> first() {
        return marked().stream().map(Growing::dayOf).min(LocalDate::compareTo);
    }

    static LocalDate dayOf(TimelineStep step) {
        LocalDate done = step.done();
        return done == null ? step.ideal() : done;
    }

    private Optional<LocalDate> day(Step step) {
        return timeline.step(step).map(Growing::dayOf);
    }
}
