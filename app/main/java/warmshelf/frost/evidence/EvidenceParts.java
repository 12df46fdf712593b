package warmshelf.frost.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import warmshelf.frost.FrostEvidence;
import warmshelf.frost.FrostNote;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;
import warmshelf.frost.station.StationEstimate;

/** What each station had to do with a garden's dates, and which cautions belong to them. */
final class EvidenceParts {
    private static final double GREAT_DISTANCE_KM = 60;
    private static final double GREAT_DIFFERENCE_M = 150;

    private EvidenceParts() {}

    /** The stations that count most; {@code share} is what all of them have in the dates. */
    static List<FrostEvidence.Station> stations(StationEstimate told, double share, GroupEvidence evidence) {
        return told.stations().stream()
                .flatMap(part ->
                        evidence.station(part.station().id()).map(station -> station(part, share, station)).stream())
                .toList();
    }

    private static FrostEvidence.Station station(StationEstimate.Part part, double share, LocalStation station) {
        return new FrostEvidence.Station(
                // what a member's own thermometer is called is theirs to know
                station.garden() == null ? Optional.of(station.name()) : Optional.empty(),
                station.kind(),
                station.source(),
                part.distanceKm(),
                part.elevationM(),
                part.station().medianDay(Side.SPRING),
                part.station().medianDay(Side.AUTUMN),
                part.adjustmentDays(),
                share * part.weight());
    }

    /** The cautions where the group's stations are all there is. */
    static List<FrostNote> notes(Garden garden, double elevationM, StationEstimate told, boolean byMonths) {
        List<FrostNote> notes = new ArrayList<>();
        notes.add(new FrostNote.Shelter());
        notes.add(new FrostNote.MeasuredInUnitedStates());
        if (byMonths) {
            notes.add(new FrostNote.SomeOnMonths());
        }
        StationEstimate.Part nearest = told.stations().get(0);
        if (garden.elevationM().isEmpty()) {
            notes.add(new FrostNote.GuessedElevation(elevationM));
        }
        if (nearest.distanceKm() > GREAT_DISTANCE_KM) {
            notes.add(new FrostNote.WeightiestFar(nearest.distanceKm()));
        }
        double higher = nearest.elevationM() - elevationM;
        if (Math.abs(higher) > GREAT_DIFFERENCE_M) {
            notes.add(new FrostNote.WeightiestHigher(higher));
        }
        return List.copyOf(notes);
    }

    /** The evidence with a thermometer in the garden itself, which takes its share from all others. */
    static FrostEvidence withOwn(FrostEvidence before, LocalStation own, Threshold threshold, double share) {
        List<FrostEvidence.Station> stations = new ArrayList<>();
        stations.add(new FrostEvidence.Station(
                Optional.of(own.name()),
                own.kind(),
                own.source(),
                0,
                own.elevationM(),
                own.of(threshold, Side.SPRING).medianDay().orElse(Double.NaN),
                own.of(threshold, Side.AUTUMN).medianDay().orElse(Double.NaN),
                0,
                share));
        before.stations().forEach(station -> stations.add(station.weighing((1 - share) * station.weight())));
        FrostEvidence.Surface surface = before.surface();
        return new FrostEvidence(
                surface == null ? null : surface.weighing((1 - share) * surface.weight()),
                stations,
                before.elevationSdM(),
                before.corrected(),
                before.notes());
    }
}
