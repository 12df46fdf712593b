package warmshelf.frost;

import java.util.ArrayList;
import java.util.List;
import warmshelf.words.Units;

/** The cautions a reader of frost dates needs, in plain sentences. */
public final class FrostNotes {
    public static final String FROST_POCKET =
            "Your own garden may be a frost pocket: cold air gathers in hollows and behind hedges and"
                    + " walls, and can freeze plants there well after the neighbours' last frost.";

    /** What a published frost date speaks of. */
    public static final String SHELTER =
            "The dates speak of air at the height of a thermometer shelter; on a clear, still night the ground is"
                    + " colder.";

    private static final double FAR_STATION_KM = 40;
    private static final double GREAT_DIFFERENCE_M = 150;

    private FrostNotes() {}

    static List<String> of(SurfacePoint point, double elevationM, double elevationSdM) {
        List<String> notes = new ArrayList<>();
        notes.add("The dates rest on the years 1981-2010 and on air at the height of a thermometer shelter; on a clear,"
                + " still night the ground is colder.");
        if (elevationSdM > 0) {
            notes.add(
                    "The elevation of %s is the average of a cell about 9 km (6 miles) across; a garden higher or lower than that"
                                    .formatted(height(elevationM))
                            + " has other dates: enter its own elevation.");
        }
        double difference = Math.abs(elevationM - point.referenceElevationM());
        if (difference > GREAT_DIFFERENCE_M) {
            notes.add(
                    "The stations around lie %s %s, so the dates are moved far and are less certain; make sure of the elevation."
                            .formatted(
                                    height(difference), elevationM > point.referenceElevationM() ? "lower" : "higher"));
        }
        if (point.nearestStationKm() > FAR_STATION_KM) {
            notes.add("The nearest station with published dates is %s away; trust these dates less."
                    .formatted(distance(point.nearestStationKm())));
        }
        if (point.freezeRareShare() > 0) {
            notes.add(
                    "Frost is rare here: at %.0f %% of the stations around it comes in fewer than one year in ten. The chances"
                                    .formatted(100 * point.freezeRareShare())
                            + " count such stations with one year in twenty and all others with a frost every year,"
                            + " which errs on the safe side.");
        }
        return List.copyOf(notes);
    }

    /** A height for readers of either unit, for example '175 m (574 ft)'. */
    public static String height(double metres) {
        return Units.METRIC.height(metres) + " (" + Units.AMERICAN.height(metres) + ")";
    }

    /** A way along the ground for readers of either unit. */
    public static String distance(double kilometres) {
        return Units.METRIC.distance(kilometres) + " (" + Units.AMERICAN.distance(kilometres) + ")";
    }
}
