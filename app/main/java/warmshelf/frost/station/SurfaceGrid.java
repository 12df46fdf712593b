package warmshelf.frost.station;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** A grid of square cells, in degrees, laid over stations. */
final class SurfaceGrid {
    /** No cell is farther than this from a station with dates. */
    private static final double REACH_KM = 120;

    private static final double DEGREE_KM = 111;

    private final SurfaceFit fit;
    private final StationSet stations;
    private final double cell;

    SurfaceGrid(StationSet stations, SurfaceFit fit, double cell) {
        this.stations = stations;
        this.fit = fit;
        this.cell = cell;
    }

    /** All cells, from south to north and within a row from west to east. */
    List<SurfaceCell> cells() {
        List<double[]> points = points();
        return IntStream.range(0, points.size())
                .parallel()
                .mapToObj(index -> fit.cell(points.get(index)[0], points.get(index)[1]))
                .toList();
    }

    private List<double[]> points() {
        double margin = REACH_KM / DEGREE_KM;
        List<StationFrost> dated =
                stations.all().stream().filter(StationFrost::hasDates).toList();
        long south =
                line(dated.stream().mapToDouble(StationFrost::latitude).min().orElseThrow() - margin);
        long north =
                line(dated.stream().mapToDouble(StationFrost::latitude).max().orElseThrow() + margin);
        List<double[]> points = new ArrayList<>();
        for (long row = south; row <= north; row++) {
            double latitude = row * cell;
            List<Position> near = dated.stream()
                    .filter(station -> Math.abs(station.latitude() - latitude) < margin)
                    .map(station -> Position.of(station.latitude(), station.longitude()))
                    .toList();
            for (long column = -Math.round(180 / cell); column < Math.round(180 / cell); column++) {
                double longitude = column * cell;
                Position here = Position.of(latitude, longitude);
                if (near.stream().anyMatch(station -> station.distanceKm(here) < REACH_KM)) {
                    points.add(new double[] {latitude, longitude});
                }
            }
        }
        return points;
    }

    private long line(double degrees) {
        return Math.round(degrees / cell);
    }

    /** The day that the grid tells at a point, between the four cells around it, each moved to the point's elevation. */
    Estimates.Days at(double latitude, double longitude, double elevationM, IntPredicate eligible) {
        double south = Math.floor(latitude / cell) * cell;
        double west = Math.floor(longitude / cell) * cell;
        double up = (latitude - south) / cell;
        double right = (longitude - west) / cell;
        double spring = 0;
        double autumn = 0;
        for (int corner = 0; corner < 4; corner++) {
            boolean north = corner >= 2;
            boolean east = corner % 2 == 1;
            double weight = (north ? up : 1 - up) * (east ? right : 1 - right);
            if (weight > 0) {
                SurfaceCell one = fit.cell(south + (north ? cell : 0), west + (east ? cell : 0), eligible);
                double upward = elevationM - one.referenceElevationM();
                spring += weight * one.spring().at(upward);
                autumn += weight * one.autumn().at(upward);
            }
        }
        return new Estimates.Days(spring, autumn);
    }
}
