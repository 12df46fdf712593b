package warmshelf.frost;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.evidence.LocalStation;
import warmshelf.frost.garden.FrostCorrection;

/**
 * What a frost climate rests on, so that a reader can judge it.
 *
 * @param surface the bundled grid's part; null where it has nothing or was not asked
 * @param stations the group's own stations and thermometers that count, the weightiest first
 * @param elevationSdM how well the point's elevation is known, standard deviation in metres; 0 where it was typed in
 * @param corrected what a person corrected, by whom and why; null: nothing
 * @param notes cautions
 */
public record FrostEvidence(
        @Nullable Surface surface,
        List<Station> stations,
        double elevationSdM,
        @Nullable FrostCorrection corrected,
        List<FrostNote> notes) {

    /**
     * The bundled grid's part.
     *
     * @param cells grid cells used
     * @param referenceElevationM the elevation that the surface's dates hold for
     * @param nearestStationKm distance of the nearest station with published dates
     * @param freezeRareShare share of near stations where a freeze comes in fewer than one year in ten
     * @param springDay the last frost's median by the grid alone, moved to the point: day of a 365-day year
     * @param autumnDay the first frost's
     * @param weight share 0..1 that the grid has in the dates of spring
     */
    public record Surface(
            List<SurfacePoint.Cell> cells,
            double referenceElevationM,
            double nearestStationKm,
            double freezeRareShare,
            double springDay,
            double autumnDay,
            double weight) {
        /** The same with another share. */
        public Surface weighing(double share) {
            return new Surface(
                    cells, referenceElevationM, nearestStationKm, freezeRareShare, springDay, autumnDay, share);
        }
    }

    /**
     * A station's part.
     *
     * @param name empty where it is a member's own, whose name is theirs to know
     * @param kind how its dates came about
     * @param springDay its own last frost's median, before it was moved
     * @param autumnDay its own first frost's
     * @param adjustmentDays how much later the last frost is at the point than there, by latitude and height
     * @param weight share 0..1 that it has in the dates of spring; may be a little below 0
     */
    public record Station(
            Optional<String> name,
            LocalStation.Kind kind,
            String source,
            double distanceKm,
            double elevationM,
            double springDay,
            double autumnDay,
            double adjustmentDays,
            double weight) {
        /** The same with another share. */
        public Station weighing(double share) {
            return new Station(name, kind, source, distanceKm, elevationM, springDay, autumnDay, adjustmentDays, share);
        }
    }
}
