package warmshelf.frost;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import warmshelf.frost.SurfacePoint.Cell;
import warmshelf.frost.SurfacePoint.SeasonFigures;

/**
 * A quarter-degree grid over the United States of last spring and first autumn frost (0 C), fitted from the dates of 4,913
 * stations of the 1981-2010 climate normals. Bilinear between the four grid points around a point; where some of the four
 * are missing (sea, border) the others share their weight.
 */
public final class FrostSurface {
    private static final double CELL = 0.25;
    private static final double TOLERANCE = 1e-9;

    private final SortedRows rows;

    private FrostSurface(SortedRows rows) {
        this.rows = rows;
    }

    /** The surface that comes with the program; read once, at first use. */
    public static FrostSurface bundled() {
        return Bundled.SURFACE;
    }

    /** The figures at a point; empty where the grid has none of the four points around it. */
    Optional<SurfacePoint> at(double latitude, double longitude) {
        double south = Math.floor(latitude / CELL) * CELL;
        double west = Math.floor(longitude / CELL) * CELL;
        double up = (latitude - south) / CELL;
        double right = (longitude - west) / CELL;
        List<Corner> corners = new ArrayList<>();
        add(corners, south, west, (1 - up) * (1 - right));
        add(corners, south, west + CELL, (1 - up) * right);
        add(corners, south + CELL, west, up * (1 - right));
        add(corners, south + CELL, west + CELL, up * right);
        return corners.isEmpty() ? Optional.empty() : Optional.of(blended(corners));
    }

    private void add(List<Corner> corners, double latitude, double longitude, double weight) {
        if (weight > TOLERANCE) {
            rows.find(row -> order(row, latitude, longitude))
                    .ifPresent(row -> corners.add(new Corner(numbers(row), weight)));
        }
    }

    private static int order(String[] row, double latitude, double longitude) {
        int byLatitude = Double.compare(Double.parseDouble(row[0]), latitude);
        return byLatitude != 0 ? byLatitude : Double.compare(Double.parseDouble(row[1]), longitude);
    }

    private static List<Double> numbers(String[] row) {
        return Arrays.stream(row).map(Double::valueOf).toList();
    }

    private static SurfacePoint blended(List<Corner> corners) {
        double total = corners.stream().mapToDouble(Corner::weight).sum();
        List<Cell> cells = corners.stream()
                .map(corner -> new Cell(corner.row.get(0), corner.row.get(1), corner.weight / total))
                .toList();
        return new SurfacePoint(
                cells,
                mean(corners, 2),
                new SeasonFigures(mean(corners, 3), mean(corners, 4), mean(corners, 5), mean(corners, 9)),
                new SeasonFigures(mean(corners, 6), mean(corners, 7), mean(corners, 8), mean(corners, 10)),
                mean(corners, 11),
                mean(corners, 12));
    }

    /** The weighted mean of one column, counted from 0 in the order of the table's heading. */
    private static double mean(List<Corner> corners, int column) {
        double total = corners.stream().mapToDouble(Corner::weight).sum();
        return corners.stream()
                        .mapToDouble(corner -> corner.weight * corner.row.get(column))
                        .sum()
                / total;
    }

    private record Corner(List<Double> row, double weight) {}

    private static final class Bundled {
        static final FrostSurface SURFACE = new FrostSurface(SortedRows.of("frost-surface-us.csv"));
    }
}
