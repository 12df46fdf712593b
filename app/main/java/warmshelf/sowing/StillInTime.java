package warmshelf.sowing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.seed.Lot;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.timeline.Verdict;

/** What of the seed box, sown instead, still comes to something where a sowing would be too late. */
final class StillInTime {
    private static final int SHOWN = 8;

    private final SowingPlanner planner;
    private final CropCatalogue crops;
    private final ToDoubleFunction<Hardiness> risk;

    /** @param risk the chance of a later frost that the grower accepts for a class of crops */
    StillInTime(SowingPlanner planner, CropCatalogue crops, ToDoubleFunction<Hardiness> risk) {
        this.planner = planner;
        this.crops = crops;
        this.risk = risk;
    }

    /**
     * One lot that could be sown instead.
     *
     * @param sowBy the last day on which sowing it makes sense
     * @param ripe the usual first harvest; null for flowers and others that nobody waits to pick
     */
    public record Other(
            Lot lot, Crop crop, LocalDate sowBy, @Nullable LocalDate ripe) {}

    /**
     * The quickest first; of the same variety the grower's own lot, else the newest.
     *
     * @param late what is too late
     * @param lots with seed left
     */
    List<Other> insteadOf(Asking late, List<Lot> lots, LocalDate today) {
        Map<String, Lot> ofEach = new HashMap<>();
        lots.forEach(
                lot -> ofEach.merge(lot.cropId() + " " + lot.variety(), lot, (one, other) -> better(late, one, other)));
        return ofEach.values().stream()
                .map(lot -> other(late, lot, today))
                .flatMap(Optional::stream)
                .filter(other -> other.ripe() != null || late.crop().maturity().isEmpty())
                .sorted(Comparator.comparing(Other::ripe, Comparator.nullsLast(Comparator.naturalOrder()))
                        .thenComparing(other -> other.crop().name())
                        .thenComparing(other -> other.lot().variety()))
                .limit(SHOWN)
                .toList();
    }

    private static Lot better(Asking late, Lot one, Lot other) {
        boolean oneIsOwn = Objects.equals(one.ownerId(), late.grower().memberId());
        boolean otherIsOwn = Objects.equals(other.ownerId(), late.grower().memberId());
        if (oneIsOwn != otherIsOwn) {
            return oneIsOwn ? one : other;
        }
        return one.seedYear() >= other.seedYear() ? one : other;
    }

    private Optional<Other> other(Asking late, Lot lot, LocalDate today) {
        Crop crop = crops.ofVariety(lot.cropId(), lot.variety());
        Asking fromSpringOn = new Asking(
                late.grower(),
                crop,
                lot.id(),
                late.method(),
                late.warm(),
                late.season(),
                SeasonPart.SPRING,
                risk.applyAsDouble(crop.hardiness()),
                late.underCoverOn());
        int celsius = planner.reckonedC(crop, late.warm());
        if (planner.emergence(fromSpringOn, celsius).isEmpty()) {
            return Optional.empty();
        }
        Asking asking = planner.inNextPart(fromSpringOn, celsius, today);
        return planner.timeline(asking, celsius, today, Seen.nothing())
                .filter(timeline -> timeline.verdict() == Verdict.IN_TIME || timeline.verdict() == Verdict.HURRY)
                .flatMap(timeline -> other(lot, crop, timeline));
    }

    private static Optional<Other> other(Lot lot, Crop crop, Timeline timeline) {
        LocalDate ripe = timeline.step(Step.RIPE).map(TimelineStep::ideal).orElse(null);
        return timeline.step(Step.SOW).map(sow -> new Other(lot, crop, sow.latest(), ripe));
    }
}
