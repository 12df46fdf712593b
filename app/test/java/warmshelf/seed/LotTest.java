package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Crops;

class LotTest {
    private static final UUID OWNER = new UUID(0, 1);
    private static final Lot LOT = new Lot(
            new UUID(0, 9),
            "pepper",
            "Harbour Light",
            2025,
            40,
            OWNER,
            "Tom",
            false,
            "",
            SeedSource.PACKET,
            Storage.UNKNOWN,
            0,
            1);

    @Test
    void its_owner_and_coordinators_may_change_it_and_nobody_else() {
        UUID other = new UUID(0, 2);

        assertThat(LOT.mayBeChangedBy(OWNER, false)).isTrue();
        assertThat(LOT.mayBeChangedBy(other, true)).isTrue();
        assertThat(LOT.mayBeChangedBy(other, false)).isFalse();
    }

    @Test
    void a_test_moves_what_is_expected_towards_what_came_up() {
        GerminationShare.Uncertain untested = LOT.share(Crops.PEPPER, List.of(), 2027);
        GerminationShare.Uncertain tested = LOT.share(Crops.PEPPER, List.of(test(2027, 19, 20)), 2027);

        assertThat(untested).isEqualTo(AgedSeed.of(Crops.PEPPER, 2));
        assertThat(tested.mean()).isBetween(untested.mean(), 0.95);
        assertThat(tested.interval(0.9).low())
                .isGreaterThan(untested.interval(0.9).low());
    }

    @Test
    void a_test_of_this_season_counts_seed_for_seed() {
        Lot fresh = new Lot(
                LOT.id(),
                "pepper",
                "Harbour Light",
                2027,
                40,
                OWNER,
                "",
                false,
                "",
                SeedSource.PACKET,
                Storage.UNKNOWN,
                0,
                1);
        GerminationShare.Uncertain untested = fresh.share(Crops.PEPPER, List.of(), 2027);

        assertThat(fresh.share(Crops.PEPPER, List.of(test(2027, 19, 20)), 2027)).isEqualTo(untested.afterTest(19, 20));
    }

    @Test
    void the_older_a_test_the_less_it_tells() {
        double thisYear =
                LOT.share(Crops.PEPPER, List.of(test(2027, 20, 20)), 2027).mean();
        double twoYearsAgo =
                LOT.share(Crops.PEPPER, List.of(test(2025, 20, 20)), 2027).mean();
        double never = LOT.share(Crops.PEPPER, List.of(), 2027).mean();

        assertThat(twoYearsAgo).isBetween(never, thisYear).isNotEqualTo(never);
    }

    @Test
    void tests_may_come_in_any_order() {
        List<GerminationTest> tests = List.of(test(2025, 9, 10), test(2027, 3, 10));

        assertThat(LOT.share(Crops.PEPPER, List.of(tests.get(1), tests.get(0)), 2027))
                .isEqualTo(LOT.share(Crops.PEPPER, tests, 2027));
    }

    @Test
    void seed_packed_for_a_later_year_counts_as_fresh() {
        assertThat(LOT.ageIn(2024)).isZero();
        assertThat(LOT.ageIn(2027)).isEqualTo(2);
    }

    @Test
    void the_share_is_told_in_tenths_with_its_range() {
        assertThat(LotWords.inWords(GerminationShare.tested(17, 20))).isEqualTo("about 8 in 10 (likely 69 to 94 %)");
    }

    private static GerminationTest test(int year, int germinated, int seeds) {
        return new GerminationTest(LocalDate.of(year, 2, 1), germinated, seeds);
    }
}
