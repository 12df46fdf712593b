package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** When SEQUENCE and LAST-MODIFIED change: RFC 5545, sections 3.8.7.3 and 3.8.7.4. */
class ToldDayTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Instant FIRST = Instant.parse("2027-03-01T15:00:00Z");
    private static final Instant LATER = FIRST.plus(Duration.ofDays(1));

    @Test
    void what_stays_the_same_keeps_its_number_and_its_moment() {
        List<ToldDay> first = told(Map.of(), FIRST, day("Sow: Pepper", 8));

        assertThat(told(byUid(first), LATER, day("Sow: Pepper", 8))).isEqualTo(first);
    }

    @Test
    void a_moved_day_and_a_new_title_each_raise_the_number() {
        List<ToldDay> first = told(Map.of(), FIRST, day("Sow: Pepper", 8));
        List<ToldDay> moved = told(byUid(first), LATER, day("Sow: Pepper", 11));
        List<ToldDay> renamed = told(byUid(moved), LATER.plusSeconds(1), day("Sow: Pepper · Ore Dock", 11));

        assertThat(first.get(0).sequence()).isZero();
        assertThat(moved.get(0).sequence()).isEqualTo(1);
        assertThat(moved.get(0).changedAt()).isEqualTo(LATER);
        assertThat(renamed.get(0).sequence()).isEqualTo(2);
        assertThat(renamed.get(0).uid()).isEqualTo(first.get(0).uid());
    }

    @Test
    void what_is_called_off_is_told_so_until_its_day_is_over_and_then_forgotten() {
        List<ToldDay> first = told(Map.of(), FIRST, day("You look", 8));
        List<ToldDay> off = told(byUid(first), LATER);
        List<ToldDay> still = told(byUid(off), LATER.plusSeconds(9));

        assertThat(off).singleElement().satisfies(each -> {
            assertThat(each.cancelled()).isTrue();
            assertThat(each.sequence()).isEqualTo(1);
        });
        assertThat(still).as("told the same way the next time").isEqualTo(off);
        assertThat(ToldDay.all(byUid(off), List.of(), LATER, LocalDate.of(2027, 3, 8)))
                .hasSize(1);
        assertThat(ToldDay.all(byUid(off), List.of(), LATER, LocalDate.of(2027, 3, 9)))
                .isEmpty();
    }

    @Test
    void what_comes_back_is_on_again_with_a_higher_number() {
        List<ToldDay> first = told(Map.of(), FIRST, day("You look", 8));
        List<ToldDay> off = told(byUid(first), LATER);
        List<ToldDay> back = told(byUid(off), LATER.plusSeconds(9), day("You look", 8));

        assertThat(back.get(0).cancelled()).isFalse();
        assertThat(back.get(0).sequence()).isEqualTo(2);
    }

    private static FeedDay day(String summary, int dayOfMarch) {
        return new FeedDay("u", FeedDay.Kind.STEP, LocalDate.of(2027, 3, dayOfMarch), summary, "why", "/x");
    }

    private static List<ToldDay> told(Map<String, ToldDay> before, Instant now, FeedDay... days) {
        return ToldDay.all(before, List.of(days), now, TODAY);
    }

    private static Map<String, ToldDay> byUid(List<ToldDay> told) {
        return told.stream().collect(Collectors.toMap(ToldDay::uid, Function.identity()));
    }
}
