package warmshelf.duty;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LateRoundTest {
    private static final Named CELLAR = new Named(new UUID(0, 1), "Hall cellar");
    private static final Named TOM = new Named(new UUID(1, 1), "Tom");
    private static final Named PRIYA = new Named(new UUID(1, 2), "Priya");

    @ParameterizedTest
    @CsvSource({"17:59, 3, 0", "18:00, 3, 1", "23:59, 1, 1", "18:00, 0, 0"})
    void a_site_is_late_from_its_hour_on_while_something_is_to_do(LocalTime now, long open, int late) {
        assertThat(LateRound.at(now, List.of(watch(LocalTime.of(18, 0), TOM)), Map.of(CELLAR.id(), open)))
                .hasSize(late);
    }

    @Test
    void a_site_without_an_hour_is_never_late() {
        assertThat(LateRound.at(LocalTime.of(23, 59), List.of(watch(null, TOM)), Map.of(CELLAR.id(), 5L)))
                .isEmpty();
    }

    @Test
    void the_sentences_name_who_has_not_looked_and_who_stands_in() {
        LateRound late = new LateRound(watch(LocalTime.of(18, 0), TOM), 1);

        assertThat(late.standInWords()).isEqualTo("You stand in today at Hall cellar: Tom has not looked by 18:00.");
        assertThat(late.words())
                .isEqualTo(
                        "Hall cellar: the round was not done by 18:00, one thing is still to do. Tom is on duty, Priya stands in.");
        assertThat(late.standsIn(PRIYA.id())).isTrue();
        assertThat(late.standsIn(TOM.id())).isFalse();
    }

    private static SiteWatch watch(@Nullable LocalTime doneBy, @Nullable Named onDuty) {
        return new SiteWatch(CELLAR, doneBy, onDuty, PRIYA);
    }
}
