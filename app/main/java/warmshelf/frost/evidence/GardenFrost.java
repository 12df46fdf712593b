package warmshelf.frost.evidence;

import java.util.List;
import java.util.Optional;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.FrostEvidence;
import warmshelf.frost.FrostSeason;
import warmshelf.frost.Threshold;
import warmshelf.frost.garden.Corrections;
import warmshelf.frost.garden.FrostCorrection;
import warmshelf.frost.station.Side;

/**
 * Tells a garden's frost from the best at hand: the bundled surface, the stations that the group has brought in, a
 * thermometer in the garden itself, and what people who know better have corrected.
 */
public final class GardenFrost {
    private GardenFrost() {}

    /** The frost climate of a garden at a threshold; empty where nothing at hand tells it. */
    public static Optional<FrostClimate> of(Garden garden, GroupEvidence evidence, Threshold threshold) {
        Optional<FrostCorrection> correction =
                Corrections.holding(evidence.corrections(), garden.memberId(), country(garden), code(garden));
        Optional<FrostClimate> told = new UncorrectedFrost(garden, evidence, threshold).climate();
        if (correction.isEmpty()) {
            return told;
        }
        // A correction speaks of frost at 0 °C; other thresholds move by as many days.
        Optional<FrostClimate> frost =
                threshold == Threshold.FROST ? told : new UncorrectedFrost(garden, evidence, Threshold.FROST).climate();
        return corrected(garden, correction.get(), frost, threshold == Threshold.FROST ? Optional.empty() : told);
    }

    private static String country(Garden garden) {
        return garden.postcode() == null ? "" : garden.postcode().country();
    }

    private static String code(Garden garden) {
        return garden.postcode() == null ? "" : garden.postcode().code();
    }

    private static Optional<FrostClimate> corrected(
            Garden garden, FrostCorrection correction, Optional<FrostClimate> frost, Optional<FrostClimate> other) {
        CorrectedFrost correcting = new CorrectedFrost(correction.change(), garden.latitude());
        Optional<FrostSeason> spring = correcting.season(Side.SPRING, frost.map(FrostClimate::spring));
        Optional<FrostSeason> autumn = correcting.season(Side.AUTUMN, frost.map(FrostClimate::autumn));
        if (spring.isEmpty() || autumn.isEmpty()) {
            return Optional.empty();
        }
        FrostEvidence rests = frost.map(FrostClimate::evidence)
                .orElseGet(() -> new FrostEvidence(null, List.of(), 0, null, List.of()));
        FrostEvidence said =
                new FrostEvidence(rests.surface(), rests.stations(), rests.elevationSdM(), correction, rests.notes());
        FrostSeason springSeen = spring.get();
        FrostSeason autumnSeen = autumn.get();
        if (other.isPresent() && frost.isPresent()) {
            springSeen = other.get()
                    .spring()
                    .movedBy(springSeen.medianDay() - frost.get().spring().medianDay());
            autumnSeen = other.get()
                    .autumn()
                    .movedBy(autumnSeen.medianDay() - frost.get().autumn().medianDay());
        }
        return Optional.of(new FrostClimate(
                garden.name(),
                garden.latitude(),
                garden.longitude(),
                frost.map(FrostClimate::elevationM).orElse(garden.elevationM().orElse(0)),
                springSeen,
                autumnSeen,
                said));
    }
}
