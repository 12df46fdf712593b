package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.allocation.WarmDays;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;

class FixedAroundTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 10);
    private static final UUID STAY = UUID.fromString("00000000-0000-4000-8000-00000000000a");
    private final FixedAround fixed = new FixedAround();

    @Test
    void a_stay_that_follows_a_turned_mat_is_kept_to_each_days_set_point() {
        fixed.add(stay("mat"), "M1", 2, new WarmDays(TODAY, List.of(26.0, 26.0, 28.0)));

        assertThat(fixed.stays())
                .extracting(FixedStay::id, FixedStay::days, FixedStay::band)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                STAY.toString(), new DayRange(TODAY.minusDays(3), TODAY.plusDays(2)), new Band(26, 26)),
                        org.assertj.core.groups.Tuple.tuple(
                                STAY + "#2", new DayRange(TODAY.plusDays(2), TODAY.plusDays(3)), new Band(28, 28)));
    }

    @Test
    void a_run_of_days_tells_of_which_stay_it_is() {
        assertThat(FixedAround.stayOf(STAY + "#2")).isEqualTo(STAY.toString());
        assertThat(FixedAround.stayOf(STAY.toString())).isEqualTo(STAY.toString());
    }

    @Test
    void under_a_light_nothing_is_promised_and_a_stay_without_warmth_left_is_none() {
        fixed.add(stay("lit"), "Hall", 1, null);
        fixed.add(stay("mat"), "M1", 1, null);

        assertThat(fixed.stays()).singleElement().satisfies(lit -> {
            assertThat(lit.lit()).isTrue();
            assertThat(lit.band()).isNull();
        });
    }

    private static Stay stay(String kind) {
        return new Stay(
                STAY,
                new UUID(1, 1),
                new UUID(2, 2),
                kind,
                "",
                new Slot(1, 2),
                TODAY.minusDays(3),
                TODAY.plusDays(3),
                1);
    }
}
