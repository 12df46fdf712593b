package warmshelf.frost.station;

import java.util.List;
import java.util.stream.IntStream;

/** Tells each station's dates from all the others, in every way there is, and counts how far off that was. */
public final class LeaveOneOut {
    private static final double CELL = 0.25;

    private final StationSet stations;

    public LeaveOneOut(List<StationFrost> stations) {
        this.stations = new StationSet(stations);
    }

    /** Errors of one season, way by way. */
    public record Errors(ErrorSpread surface, ErrorSpread stations, ErrorSpread hopkins, ErrorSpread nearest) {}

    /** Leaves every station with dates out, one at a time; a grid is then fitted anew around each. */
    public List<Errors> springAndAutumn() {
        Estimates estimates = new Estimates(stations);
        SurfaceGrid grid = new SurfaceGrid(stations, SurfaceFit.ofDatesAlone(stations), CELL);
        List<double[][]> rows = IntStream.range(0, stations.size())
                .parallel()
                .filter(index -> stations.all().get(index).hasDates())
                .mapToObj(index -> errors(index, estimates, grid))
                .toList();
        return List.of(errors(rows, 0), errors(rows, 1));
    }

    private double[][] errors(int index, Estimates estimates, SurfaceGrid grid) {
        StationFrost left = stations.all().get(index);
        double latitude = left.latitude();
        double longitude = left.longitude();
        double elevation = left.elevationM();
        List<Estimates.Days> ways = List.of(
                grid.at(latitude, longitude, elevation, other -> other != index),
                estimates
                        .fitted(latitude, longitude, elevation, other -> other != index)
                        .orElseThrow(),
                estimates
                        .byHopkins(latitude, longitude, elevation, other -> other != index)
                        .orElseThrow(),
                estimates
                        .nearestUnadjusted(latitude, longitude, elevation, other -> other != index)
                        .orElseThrow());
        return new double[][] {off(ways, left, Side.SPRING), off(ways, left, Side.AUTUMN)};
    }

    private static double[] off(List<Estimates.Days> ways, StationFrost left, Side side) {
        return ways.stream()
                .mapToDouble(days -> days.of(side) - left.days(side).medianDay())
                .toArray();
    }

    private static Errors errors(List<double[][]> rows, int season) {
        return new Errors(
                spread(rows, season, 0), spread(rows, season, 1), spread(rows, season, 2), spread(rows, season, 3));
    }

    private static ErrorSpread spread(List<double[][]> rows, int season, int way) {
        return ErrorSpread.of(rows.stream().mapToDouble(row -> row[season][way]).toArray());
    }
}
