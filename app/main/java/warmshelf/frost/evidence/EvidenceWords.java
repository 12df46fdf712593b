package warmshelf.frost.evidence;

import java.util.ArrayList;
import java.util.List;
import warmshelf.frost.FrostEvidence;
import warmshelf.frost.FrostNotes;
import warmshelf.frost.MeasuredError;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;
import warmshelf.frost.station.StationEstimate;

/** Puts into words and figures what each station had to do with a garden's dates. */
final class EvidenceWords {
    private static final double GREAT_DISTANCE_KM = 60;
    private static final double GREAT_DIFFERENCE_M = 150;

    private EvidenceWords() {}

    /** The stations that count most; {@code share} is what all of them have in the dates. */
    static List<FrostEvidence.Station> stations(StationEstimate told, double share, GroupEvidence evidence) {
        return told.stations().stream()
                .map(part -> new FrostEvidence.Station(
                        evidence.station(part.station().id())
                                .map(EvidenceWords::publicName)
                                .orElse(part.name()),
                        evidence.station(part.station().id())
                                .map(station -> station.kind().words())
                                .orElse(""),
                        evidence.station(part.station().id())
                                .map(LocalStation::source)
                                .orElse(""),
                        part.distanceKm(),
                        part.elevationM(),
                        part.station().medianDay(Side.SPRING),
                        part.station().medianDay(Side.AUTUMN),
                        part.adjustmentDays(),
                        share * part.weight()))
                .toList();
    }

    /** What a member's own thermometer is called is theirs to know. */
    private static String publicName(LocalStation station) {
        return station.garden() == null ? station.name() : "A member’s thermometer";
    }

    /** The cautions where the group's stations are all there is. */
    static List<String> notes(Garden garden, double elevationM, StationEstimate told, boolean byMonths) {
        List<String> notes = new ArrayList<>();
        notes.add(FrostNotes.SHELTER);
        notes.add("How far off dates told from stations around are was measured in the United States; elsewhere they"
                + " were off by more, and the range given here is as wide as that.");
        if (byMonths) {
            notes.add("Some rest on twelve monthly means. " + MeasuredError.monthlySentence(false));
        }
        StationEstimate.Part nearest = told.stations().get(0);
        if (garden.elevationM().isEmpty()) {
            notes.add(("The table of postcodes does not tell how high this place lies; %s is taken, as the stations"
                            + " around lie. Enter the garden’s own elevation to be surer.")
                    .formatted(FrostNotes.height(elevationM)));
        }
        if (nearest.distanceKm() > GREAT_DISTANCE_KM) {
            notes.add("The station that counts most is %s away; trust these dates less."
                    .formatted(FrostNotes.distance(nearest.distanceKm())));
        }
        if (Math.abs(elevationM - nearest.elevationM()) > GREAT_DIFFERENCE_M) {
            notes.add("The station that counts most lies %s %s, so the dates are moved far and are less certain."
                    .formatted(
                            FrostNotes.height(Math.abs(elevationM - nearest.elevationM())),
                            elevationM > nearest.elevationM() ? "lower" : "higher"));
        }
        return List.copyOf(notes);
    }

    /** The evidence with a thermometer in the garden itself, which takes its share from all others. */
    static FrostEvidence withOwn(FrostEvidence before, LocalStation own, Threshold threshold, double share) {
        List<FrostEvidence.Station> stations = new ArrayList<>();
        stations.add(new FrostEvidence.Station(
                own.name(),
                own.kind().words(),
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
