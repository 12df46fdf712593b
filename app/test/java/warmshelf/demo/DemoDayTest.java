package warmshelf.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import warmshelf.web.PretendedClock;

class DemoDayTest {
    @Test
    void on_every_day_of_three_years_the_demo_stands_in_early_may_at_the_same_hour() {
        LocalDate.of(2026, 1, 1).datesUntil(LocalDate.of(2029, 1, 1)).forEach(day -> {
            Instant now = day.atTime(9, 41).atZone(DemoGroup.ZONE).toInstant();

            DemoDay stands = DemoDay.on(now);
            ZonedDateTime shown = now.plus(stands.ahead()).atZone(DemoGroup.ZONE);

            assertThat(shown.toLocalDate())
                    .as("%s", day)
                    .isBetween(LocalDate.of(stands.season(), 5, 5), LocalDate.of(stands.season(), 5, 11));
            assertThat(shown.toLocalTime()).as("%s", day).isEqualTo("09:41");
            // as the days grow longer it is this spring's group, as they grow shorter the next spring's
            if (day.getMonthValue() != 6) {
                assertThat(stands.season()).isEqualTo(day.getYear() + (day.getMonthValue() > 6 ? 1 : 0));
            }
        });
    }

    @Test
    void early_in_may_nothing_is_pretended() {
        for (int day = 5; day <= 11; day++) {
            Instant now = LocalDate.of(2027, 5, day)
                    .atTime(20, 0)
                    .atZone(DemoGroup.ZONE)
                    .toInstant();
            Clock real = Clock.fixed(now, DemoGroup.ZONE);

            assertThat(DemoDay.on(now).clock(real)).isSameAs(real);
        }
    }

    @Test
    void what_is_pretended_is_said_with_the_day_and_the_season() {
        Instant now = Instant.parse("2026-11-30T15:00:00Z");

        Clock clock = DemoDay.on(now).clock(Clock.fixed(now, DemoGroup.ZONE));

        assertThat(clock).isInstanceOfSatisfying(PretendedClock.class, pretended -> {
            assertThat(pretended.words(LocalDate.ofInstant(pretended.instant(), DemoGroup.ZONE)))
                    .startsWith("This demo pretends that today is Saturday, 8 May 2027: day 43 of the 2027 season.");
        });
    }

    @Test
    void a_demo_that_is_opened_again_goes_on_from_where_it_was_left() {
        Instant left = Instant.parse("2027-05-08T18:00:00Z");
        Instant now = Instant.parse("2026-12-20T12:00:00Z");

        Clock clock = DemoDay.leftAt(2027, left, now).clock(Clock.fixed(now.plus(Duration.ofHours(1)), DemoGroup.ZONE));

        assertThat(clock.instant()).isEqualTo(left.plus(Duration.ofHours(1)));
    }
}
