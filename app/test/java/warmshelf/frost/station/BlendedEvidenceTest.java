package warmshelf.frost.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import warmshelf.frost.FrostSeason;
import warmshelf.frost.evidence.SeasonBlend;
import warmshelf.testing.Everything;

/**
 * What stations add to a grid that was fitted without them, on the dates published for 4,913 stations: NOAA/NCEI 1981-2010 US
 * Climate Normals. A third of the stations makes the grid, a third is brought in, and 300 of the last third are to be told.
 */
class BlendedEvidenceTest {
    private static final int TOLD = 300;
    /** Half of the stations kept out lay within 4.0 days of the grid, a normal spread of 4.0 / 0.6745. */
    private static final double GRID_SCATTER = 5.9;

    @Test
    void grid_and_stations_together_are_nearer_to_the_published_dates_than_either_alone() {
        Path file = Everything.reference("frost-stations-noaa.csv");
        Everything.require(Files.exists(file), "the file of published station dates, " + file.getFileName() + ",");
        List<StationFrost> all = new ArrayList<>(StationFile.read(file));
        all.removeIf(station -> !station.hasDates());
        Collections.shuffle(all, new Random(20270301));
        int third = all.size() / 3;
        StationSet fitted = new StationSet(all.subList(0, third));
        StationSet brought = new StationSet(all.subList(third, 2 * third));
        SurfaceGrid grid = new SurfaceGrid(fitted, SurfaceFit.ofDatesAlone(fitted), 0.25);
        double[][] errors = new double[3][TOLD];
        for (int i = 0; i < TOLD; i++) {
            StationFrost told = all.get(2 * third + i);
            FrostSeason surface = season(grid.at(told.latitude(), told.longitude(), told.elevationM(), index -> true)
                    .spring());
            FrostSeason stations = StationEstimate.at(brought, told.latitude(), told.longitude(), told.elevationM(), 0)
                    .orElseThrow()
                    .spring();
            double published = told.medianDay(Side.SPRING);
            errors[0][i] = surface.medianDay() - published;
            errors[1][i] = stations.medianDay() - published;
            errors[2][i] = SeasonBlend.of(surface, stations).season().medianDay() - published;
        }

        double gridAlone = ErrorSpread.of(errors[0]).median();
        double stationsAlone = ErrorSpread.of(errors[1]).median();
        ErrorSpread together = ErrorSpread.of(errors[2]);

        System.out.printf(
                "last spring frost told for %d stations: grid %.2f days, stations %.2f, together %.2f (nine in ten %.1f)%n",
                TOLD, gridAlone, stationsAlone, together.median(), together.nineTenths());
        assertThat(together.median()).isLessThan(Math.min(gridAlone, stationsAlone));
    }

    private static FrostSeason season(double medianDay) {
        return new FrostSeason(1, medianDay, 0, Hopkins.DAYS_PER_100M, 12, GRID_SCATTER, 0);
    }
}
