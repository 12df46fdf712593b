package warmshelf.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;

/**
 * A sowing as the picture of a season has it.
 *
 * @param warm whether it was to lie on a mat
 * @param celsius the temperature its dates are reckoned at
 */
public record Growing(UUID id, String crop, String variety, boolean warm, int celsius, Timeline timeline) {
    /** A run of days in one place: from a day up to the day of the next. */
    public record Stretch(Phase phase, LocalDate from, LocalDate to) {}

    /** Where it is from sowing on, without gaps; the last, out, ends with the picture. Nothing that lasts no day is listed. */
    List<Stretch> stretches(LocalDate end) {
        Map<Phase, LocalDate> begins = begins();
        List<Stretch> stretches = new ArrayList<>();
        List<Phase> phases = List.copyOf(begins.keySet());
        for (int i = 0; i < phases.size(); i++) {
            LocalDate from = begins.get(phases.get(i));
            LocalDate to = i + 1 < phases.size() ? begins.get(phases.get(i + 1)) : end;
            if (from.isBefore(to)) {
                stretches.add(new Stretch(phases.get(i), from, to));
            }
        }
        return stretches;
    }

    private Map<Phase, LocalDate> begins() {
        Map<Phase, LocalDate> begins = new TreeMap<>();
        day(Step.SOW).ifPresent(day -> begins.put(warm ? Phase.HEAT : Phase.ROOM, day));
        if (warm) {
            day(Step.OFF_HEAT).ifPresent(day -> begins.put(Phase.ROOM, day));
        }
        // What is fed or potted on stands under a light, even where nobody noted when it was put there.
        Stream.of(Step.LIGHT, Step.FIRST_FEED, Step.POT_ON)
                .map(this::day)
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(day -> begins.put(Phase.LIGHT, day));
        day(Step.HARDEN_OFF).ifPresent(day -> begins.put(Phase.HARDENING, day));
        day(Step.PLANT_OUT).ifPresent(day -> begins.put(Phase.OUT, day));
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

    Optional<LocalDate> out() {
        return day(Step.PLANT_OUT);
    }

    static LocalDate dayOf(TimelineStep step) {
        LocalDate done = step.done();
        return done == null ? step.ideal() : done;
    }

    private Optional<LocalDate> day(Step step) {
        return timeline.step(step).map(Growing::dayOf);
    }
}
