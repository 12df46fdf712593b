package warmshelf.finding.prediction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import warmshelf.finding.statistics.ObservedShare;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.Threshold;
import warmshelf.frost.evidence.Garden;
import warmshelf.frost.evidence.GardenFrost;
import warmshelf.frost.evidence.GroupEvidence;
import warmshelf.frost.garden.ThermometerRecord;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.SeasonFrost;
import warmshelf.frost.station.Side;

/**
 * Nights of frost as the evidence told them, against those that the group's own thermometers showed.
 *
 * @param seasons each spring and each autumn that a thermometer was read whole
 * @param risks how often frost came beyond the days that were told
 */
record FrostPredictions(List<FrostPrediction> seasons, List<ToldRisk> risks) {
    /** The risks that a member can accept. */
    private static final List<Double> CHANCES = List.of(0.5, 0.3, 0.1);

    private static final List<Threshold> THRESHOLDS = List.of(Threshold.FROST, Threshold.KILLING);

    /**
     * A chance of frost beyond a day, and how often it came.
     *
     * @param chance 0 to 1
     * @param came out of the seasons for which such a day was told
     */
    record ToldRisk(Side side, Threshold threshold, double chance, ObservedShare came) {}

    /** Holds each thermometer's seasons against what the evidence tells without it. */
    static FrostPredictions of(List<ThermometerRecord> thermometers, GroupEvidence evidence) {
        List<FrostPrediction> seasons = new ArrayList<>();
        for (ThermometerRecord thermometer : thermometers) {
            for (Threshold threshold : THRESHOLDS) {
                seasons.addAll(seasons(thermometer, threshold, evidence));
            }
        }
        return of(seasons);
    }

    static FrostPredictions of(List<FrostPrediction> seasons) {
        List<ToldRisk> risks = new ArrayList<>();
        for (Threshold threshold : THRESHOLDS) {
            for (Side side : Side.values()) {
                CHANCES.forEach(chance -> risk(seasons, side, threshold, chance).ifPresent(risks::add));
            }
        }
        return new FrostPredictions(seasons, risks);
    }

    private static List<FrostPrediction> seasons(
            ThermometerRecord thermometer, Threshold threshold, GroupEvidence evidence) {
        Optional<FrostRecord> shown = thermometer.frost(threshold);
        Optional<FrostClimate> told = shown.flatMap(
                record -> GardenFrost.of(garden(thermometer), evidence.without(thermometer.id()), threshold));
        List<FrostPrediction> seasons = new ArrayList<>();
        if (shown.isPresent() && told.isPresent()) {
            shown.get()
                    .spring()
                    .seasons()
                    .forEach(spring -> seasons.add(one(thermometer, Side.SPRING, threshold, told.get(), spring)));
            shown.get()
                    .autumn()
                    .seasons()
                    .forEach(autumn -> seasons.add(one(thermometer, Side.AUTUMN, threshold, told.get(), autumn)));
        }
        return seasons;
    }

    private static FrostPrediction one(
            ThermometerRecord thermometer, Side side, Threshold threshold, FrostClimate told, SeasonFrost shown) {
        return new FrostPrediction(thermometer.name(), shown.year(), side, threshold, told, shown.day());
    }

    private static Garden garden(ThermometerRecord thermometer) {
        return new Garden(
                thermometer.name(),
                thermometer.point().latitude(),
                thermometer.point().longitude(),
                OptionalDouble.of(thermometer.point().elevationM()),
                true,
                thermometer.memberId(),
                null);
    }

    private static Optional<ToldRisk> risk(
            List<FrostPrediction> seasons, Side side, Threshold threshold, double chance) {
        List<Boolean> came = seasons.stream()
                .filter(season -> season.side() == side && season.threshold() == threshold)
                .flatMap(season -> season.day(chance).map(season::cameBeyond).stream())
                .toList();
        int beyond = (int) came.stream().filter(each -> each).count();
        return came.isEmpty()
                ? Optional.empty()
                : Optional.of(new ToldRisk(side, threshold, chance, new ObservedShare(beyond, came.size())));
    }
}
