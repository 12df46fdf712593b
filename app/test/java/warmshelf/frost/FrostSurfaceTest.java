package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures typed from the published grid (fitted from the 1981-2010 climate normals), blended by hand. */
class FrostSurfaceTest {
    private static final FrostSurface SURFACE = FrostSurface.bundled();

    @Test
    void on_a_grid_point_the_grids_own_row_is_given() {
        // 46.75,-92.25: 338 m, spring day 140.7, 2.6 days per 100 m, scatter 7.6, yearly 12.4; autumn 268.8, -3.1, 4.5,
        // 9.6
        SurfacePoint point = SURFACE.at(46.75, -92.25).orElseThrow();

        assertThat(point.referenceElevationM()).isEqualTo(338);
        assertThat(point.spring()).isEqualTo(new SurfacePoint.SeasonFigures(140.7, 2.6, 7.6, 12.4));
        assertThat(point.autumn()).isEqualTo(new SurfacePoint.SeasonFigures(268.8, -3.1, 4.5, 9.6));
        assertThat(point.nearestStationKm()).isEqualTo(10);
        assertThat(point.cells()).hasSize(1);
    }

    @Test
    void between_four_grid_points_each_counts_by_its_nearness() {
        // 46.75: 140.7 at -92.25, 138.5 at -92.00; 47.00: 140.4 and 139.8. At 46.80,-92.10 (a fifth up, 0.6 across):
        // 0.8 x (0.4 x 140.7 + 0.6 x 138.5) + 0.2 x (0.4 x 140.4 + 0.6 x 139.8) = 139.512; the elevations 338, 293,
        // 347,
        // 328 give 315.92 m in the same way
        SurfacePoint point = SURFACE.at(46.80, -92.10).orElseThrow();

        assertThat(point.spring().medianDay()).isCloseTo(139.512, within(1e-6));
        assertThat(point.referenceElevationM()).isCloseTo(315.92, within(1e-6));
        assertThat(point.cells()).hasSize(4);
    }

    @Test
    void at_the_edge_the_points_that_are_there_share_the_weight() {
        // the grid ends at 25.25 north; -98.50 and -98.25 there: spring days 13.6 and 14.2
        SurfacePoint point = SURFACE.at(25.20, -98.375).orElseThrow();

        assertThat(point.cells()).hasSize(2);
        assertThat(point.spring().medianDay()).isCloseTo(13.9, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"21.3,-157.9", "18.4,-66.1", "51.5,0", "-33.9,151.2", "0,0", "90,180", "-90,-180", "71.3,-156.8"})
    void beyond_the_grid_there_is_nothing(double latitude, double longitude) {
        assertThat(SURFACE.at(latitude, longitude)).isEmpty();
    }

    @Test
    void the_grid_is_sorted_as_the_search_needs_it() {
        SortedRows rows = SortedRows.of("frost-surface-us.csv");

        for (int i = 1; i < rows.size(); i++) {
            double latitudeStep = Double.parseDouble(rows.row(i)[0]) - Double.parseDouble(rows.row(i - 1)[0]);
            double longitudeStep = Double.parseDouble(rows.row(i)[1]) - Double.parseDouble(rows.row(i - 1)[1]);
            assertThat(latitudeStep > 0 || (latitudeStep == 0 && longitudeStep > 0))
                    .as("row " + i)
                    .isTrue();
        }
        assertThat(rows.size()).isEqualTo(17_584);
    }
}
