package warmshelf.frost.station;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Fits the whole grid from stations and tells what it is worth: a part of the stations is kept out of a fit of its own and
 * then looked up in it.
 *
 * @param rows the grid as a CSV, its heading first
 */
public record SurfaceRun(List<String> rows, int cells, int heldOut, ErrorSpread spring, ErrorSpread autumn) {
    private static final int KEPT_OUT = 300;
    /** With few stations a tenth of them is kept out. */
    private static final int ONE_IN = 10;

    /**
     * Fits the grid.
     *
     * @param cell width of a cell in degrees
     * @param seed draws the stations kept out
     */
    public static SurfaceRun of(List<StationFrost> stations, double cell, long seed) {
        StationSet set = new StationSet(stations);
        Set<Integer> kept = keptOut(stations, seed);
        SurfaceGrid trial = new SurfaceGrid(set, SurfaceFit.ofDatesAlone(set), cell);
        List<double[]> errors = kept.stream()
                .sorted()
                .parallel()
                .map(index -> error(stations.get(index), trial, kept))
                .toList();
        List<SurfaceCell> cells = new SurfaceGrid(set, SurfaceFit.of(set), cell).cells();
        return new SurfaceRun(
                Stream.concat(Stream.of(SurfaceCell.HEADING), cells.stream().map(SurfaceCell::row))
                        .toList(),
                cells.size(),
                kept.size(),
                ErrorSpread.of(errors.stream().mapToDouble(one -> one[0]).toArray()),
                ErrorSpread.of(errors.stream().mapToDouble(one -> one[1]).toArray()));
    }

    private static double[] error(StationFrost station, SurfaceGrid trial, Set<Integer> kept) {
        Estimates.Days days =
                trial.at(station.latitude(), station.longitude(), station.elevationM(), index -> !kept.contains(index));
        return new double[] {
            days.spring() - station.days(Side.SPRING).medianDay(),
            days.autumn() - station.days(Side.AUTUMN).medianDay()
        };
    }

    private static Set<Integer> keptOut(List<StationFrost> stations, long seed) {
        List<Integer> dated = new ArrayList<>(IntStream.range(0, stations.size())
                .filter(index -> stations.get(index).hasDates())
                .boxed()
                .toList());
        Collections.shuffle(dated, new Random(seed));
        return new HashSet<>(dated.subList(0, Math.min(KEPT_OUT, dated.size() / ONE_IN)));
    }
}
