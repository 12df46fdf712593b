package warmshelf.frost;

import java.util.ArrayList;
import java.util.List;

/** Which cautions belong to dates that the bundled grid tells. */
final class FrostNotes {
    private static final double FAR_STATION_KM = 40;
    private static final double GREAT_DIFFERENCE_M = 150;

    private FrostNotes() {}

    static List<FrostNote> of(SurfacePoint point, double elevationM, double elevationSdM) {
        List<FrostNote> notes = new ArrayList<>();
        notes.add(new FrostNote.YearsAndShelter());
        if (elevationSdM > 0) {
            notes.add(new FrostNote.AverageElevation(elevationM));
        }
        double higher = point.referenceElevationM() - elevationM;
        if (Math.abs(higher) > GREAT_DIFFERENCE_M) {
            notes.add(new FrostNote.StationsHigher(higher));
        }
        if (point.nearestStationKm() > FAR_STATION_KM) {
            notes.add(new FrostNote.StationFar(point.nearestStationKm()));
        }
        if (point.freezeRareShare() > 0) {
            notes.add(new FrostNote.FrostRare(point.freezeRareShare()));
        }
        return List.copyOf(notes);
    }
}
