package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LearnedEmergenceTest {
    private static final TemperatureResponse PEPPER =
            CropCatalogue.bundled().responseOf(CropCatalogue.bundled().get("pepper"));
    private static final double TABLE = PEPPER.at(26).orElseThrow().days();
    private static final UUID LANTERN = new UUID(1, 1);
    private static final UUID HARBOUR = new UUID(2, 2);

    private final List<SeenEmergence> seen = new ArrayList<>();

    @Test
    void with_no_sowing_or_one_the_published_figures_stand_to_the_last_digit() {
        assertThat(LearnedEmergence.of(PEPPER, seen).factor()).isEqualTo(1);
        see(LANTERN, 12, 13);

        LearnedEmergence one = LearnedEmergence.of(PEPPER, seen);

        assertThat(one.sowings()).isEqualTo(1);
        assertThat(one.factor()).isEqualTo(1);
        assertThat(one.factor(LANTERN)).isEqualTo(1);
        for (Crop crop : CropCatalogue.bundled().all()) {
            TemperatureResponse published = CropCatalogue.bundled().responseOf(crop);
            assertThat(ShiftedResponse.of(published, one.factor())).isSameAs(published);
        }
    }

    /**
     * A second way to the same figures: everything is jointly normal, so the shift given what was seen is a regression on it,
     * solved here as a matrix by commons-math, without any averaging by precisions.
     */
    @Test
    void group_and_lots_are_as_the_joint_normal_distribution_has_them() {
        see(LANTERN, 9, 10);
        see(LANTERN, 8, 10);
        see(LANTERN, 11, 12);
        see(HARBOUR, 7, 8);
        see(HARBOUR, 0, 9);

        LearnedEmergence learned = LearnedEmergence.of(PEPPER, seen);

        assertThat(learned.sowings()).isEqualTo(5);
        assertThat(learned.shift().mean()).isCloseTo(regression(null).getEntry(0), within(1e-10));
        assertThat(learned.shift().variance()).isCloseTo(regression(null).getEntry(1), within(1e-10));
        for (UUID lot : List.of(LANTERN, HARBOUR)) {
            LogShift own = learned.known(lot).orElseThrow().shift();
            assertThat(own.mean()).isCloseTo(regression(lot).getEntry(0), within(1e-10));
            assertThat(own.variance()).isCloseTo(regression(lot).getEntry(1), within(1e-10));
        }
    }

    /** Mean and variance of the group's shift, or of a lot's, given all that was seen. */
    private RealVector regression(@Nullable UUID lot) {
        int size = seen.size();
        RealMatrix among = new Array2DRowRealMatrix(size, size);
        RealVector with = new ArrayRealVector(size);
        RealVector values = new ArrayRealVector(size);
        for (int row = 0; row < size; row++) {
            SeenEmergence one = seen.get(row);
            for (int column = 0; column < size; column++) {
                boolean sameLot = one.lotId().equals(seen.get(column).lotId());
                double width = Math.log(one.byDays() / Math.max(one.afterDays(), one.byDays() * 8 / 14));
                double own = row == column ? 0.25 * 0.25 + width * width / 12 : 0;
                among.setEntry(row, column, 0.20 * 0.20 + (sameLot ? 0.15 * 0.15 : 0) + own);
            }
            with.setEntry(row, 0.20 * 0.20 + (one.lotId().equals(lot) ? 0.15 * 0.15 : 0));
            double half = Math.sqrt(Math.max(one.afterDays(), one.byDays() * 8 / 14) * one.byDays());
            values.setEntry(row, Math.log(half / TABLE));
        }
        RealVector weights = new LUDecomposition(among).getSolver().solve(with);
        double before = 0.20 * 0.20 + (lot == null ? 0 : 0.15 * 0.15);
        return new ArrayRealVector(new double[] {weights.dotProduct(values), before - weights.dotProduct(with)});
    }

    @Test
    void few_sowings_move_the_table_little_and_many_of_several_lots_nearly_all_the_way() {
        double later = 1.3;
        seeAt(LANTERN, later);
        seeAt(LANTERN, later);
        double afterTwo = LearnedEmergence.of(PEPPER, seen).factor();
        for (int more = 0; more < 60; more++) {
            seeAt(new UUID(9, more), later);
        }

        double afterMany = LearnedEmergence.of(PEPPER, seen).factor();

        assertThat(afterTwo).isBetween(1.05, 1.17);
        assertThat(afterMany).isBetween(1.28, 1.3);
    }

    @Test
    void a_slow_lot_is_shifted_more_than_its_crop_and_a_lot_seen_once_goes_with_the_crop() {
        for (int each = 0; each < 4; each++) {
            seeAt(LANTERN, 1.5);
            seeAt(HARBOUR, 1.0);
        }
        UUID once = new UUID(3, 3);
        seeAt(once, 2);

        LearnedEmergence learned = LearnedEmergence.of(PEPPER, seen);

        assertThat(learned.factor(LANTERN)).isGreaterThan(learned.factor()).isLessThan(1.5);
        assertThat(learned.factor(HARBOUR)).isLessThan(learned.factor());
        assertThat(learned.factor(once)).isEqualTo(learned.factor());
        assertThat(learned.factor(new UUID(4, 4))).isEqualTo(learned.factor());
    }

    @Test
    void roots_in_a_bag_are_compared_with_seven_tenths_of_the_published_days() {
        SeenEmergence roots = new SeenEmergence(UUID.randomUUID(), LANTERN, Method.BAG, 26, 6, 7);

        assertThat(roots.seedlingDays()).isCloseTo(Math.sqrt(42) / 0.7, within(1e-12));
    }

    @Test
    void a_sowing_where_nothing_is_published_does_not_count() {
        seen.add(new SeenEmergence(UUID.randomUUID(), LANTERN, Method.CELLS, 5, 20, 21));
        seen.add(new SeenEmergence(UUID.randomUUID(), LANTERN, Method.CELLS, 5, 20, 21));

        assertThat(LearnedEmergence.of(PEPPER, seen).sowings()).isZero();
    }

    @Test
    void a_wide_gap_between_looks_counts_for_less_than_a_narrow_one() {
        SeenEmergence narrow = new SeenEmergence(UUID.randomUUID(), LANTERN, Method.CELLS, 26, 10, 11);
        SeenEmergence wide = new SeenEmergence(UUID.randomUUID(), LANTERN, Method.CELLS, 26, 0, 11);

        assertThat(wide.lookingVariance()).isGreaterThan(10 * narrow.lookingVariance());
        assertThat(wide.days()).isCloseTo(11 / Math.sqrt(1.75), within(1e-12));
        assertThatThrownBy(() -> new SeenEmergence(UUID.randomUUID(), LANTERN, Method.CELLS, 26, 11, 11))
                .hasMessage("seen after 11.0 and by 11.0 days");
    }

    @Test
    void a_shift_lengthens_the_days_and_leaves_what_suits_the_seed() {
        TemperatureResponse later = ShiftedResponse.of(PEPPER, 1.25);

        assertThat(later.at(26).orElseThrow().days()).isCloseTo(1.25 * TABLE, within(1e-12));
        assertThat(later.at(26).orElseThrow().days95())
                .isCloseTo(1.25 * PEPPER.at(26).orElseThrow().days95(), within(1e-12));
        assertThat(later.comfortable()).isEqualTo(PEPPER.comfortable());
        assertThat(later.at(60)).isEmpty();
    }

    @Test
    void sentences_say_from_how_many_sowings_and_by_how_much() {
        assertThat(LearnedWords.ofCrop(LearnedEmergence.NOTHING, 8, "26 °C"))
                .isEqualTo("Nothing has been seen here yet, so dates go by the table.");
        LearnedEmergence six = new LearnedEmergence(6, new LogShift(Math.log(1.125), 0.01), java.util.Map.of());
        assertThat(LearnedWords.ofCrop(six, 8, "26 °C"))
                .isEqualTo("From 6 sowings here: a day later than the table, 9 days instead of 8 at 26 °C.");
        assertThat(LearnedWords.ofLot(six, LANTERN, 8, "26 °C")).isEqualTo(LearnedWords.ofCrop(six, 8, "26 °C"));
        LearnedEmergence same = new LearnedEmergence(3, new LogShift(0.01, 0.01), java.util.Map.of());
        assertThat(LearnedWords.ofCrop(same, 8, "79 °F"))
                .isEqualTo("From 3 sowings here: much the same as the table, 8.1 days instead of 8 at 79 °F.");
        LearnedEmergence sooner = new LearnedEmergence(3, new LogShift(Math.log(0.8), 0.01), java.util.Map.of());
        assertThat(LearnedWords.ofCrop(sooner, 8, "79 °F"))
                .isEqualTo(
                        "From 3 sowings here: a day and a half sooner than the table, 6.4 days instead of 8 at 79 °F.");
    }

    private void see(UUID lot, double after, double by) {
        seen.add(new SeenEmergence(UUID.randomUUID(), lot, Method.CELLS, 26, after, by));
    }

    /** Seen within a few hours of a multiple of the published days. */
    private void seeAt(UUID lot, double times) {
        see(lot, times * TABLE - 0.05, times * TABLE + 0.05);
    }
}
