package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Crops;

class LotTest {
    private static final UUID OWNER = new UUID(0, 1);
    private static final Lot LOT =
            new Lot(new UUID(0, 9), "pepper", "Harbour Light", 2025, 40, OWNER, "Tom Okafor", false, "", 1);

    @Test
    void its_owner_and_coordinators_may_change_it_and_nobody_else() {
        UUID other = new UUID(0, 2);

        assertThat(LOT.mayBeChangedBy(OWNER, false)).isTrue();
        assertThat(LOT.mayBeChangedBy(other, true)).isTrue();
        assertThat(LOT.mayBeChangedBy(other, false)).isFalse();
    }

    @Test
    void a_test_moves_what_is_expected_towards_what_came_up() {
        double untested = LOT.share(Crops.PEPPER, List.of(), 2027).mean();
        double tested =
                LOT.share(Crops.PEPPER, List.of(test(2027, 19, 20)), 2027).mean();

        assertThat(untested).isCloseTo(0.55, within(1e-9)); // 7 CFR 201.31, pepper
        assertThat(tested).isCloseTo((0.55 * 8 + 19) / (8 + 20), within(1e-9));
    }

    @Test
    void a_test_from_years_ago_says_nothing_about_the_seed_now() {
        assertThat(LOT.share(Crops.PEPPER, List.of(test(2025, 20, 20)), 2027))
                .isEqualTo(LOT.share(Crops.PEPPER, List.of(), 2027));
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
