package warmshelf.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import warmshelf.web.PretendedClock;

/**
 * The day on which the demo stands. Its sowings are written for the days about 8 May, when near Duluth cabbages are out, tomatoes
 * grow under light and cucumbers are sown; last frosts there are in May and early June. On any other day of the year the demo
 * pretends to stand there: from midsummer on, in the next spring.
 *
 * @param season named by the year of planting out
 * @param ahead of the real day; zero: nothing is pretended
 */
record DemoDay(int season, Duration ahead) {
    /** From midsummer on the group works towards the next spring. */
    private static final int MIDSUMMER_DAY_OF_YEAR = 172;

    private static final int DAYS_EITHER_WAY = 3;
    private static final int DAYS_INTO_THE_SEASON = 42;

    /** The day for a demo that is filled now. */
    static DemoDay on(Instant now) {
        ZonedDateTime here = now.atZone(DemoGroup.ZONE);
        int season = here.getYear() + (here.getDayOfYear() > MIDSUMMER_DAY_OF_YEAR ? 1 : 0);
        LocalDate stands = standsOn(season);
        boolean fits = Math.abs(ChronoUnit.DAYS.between(here.toLocalDate(), stands)) <= DAYS_EITHER_WAY;
        ZonedDateTime pretended = here.with(stands);
        return new DemoDay(season, fits ? Duration.ZERO : Duration.between(here, pretended));
    }

    /** The day for a demo that is opened again: it goes on from where it was left. */
    static DemoDay leftAt(int season, Instant left, Instant now) {
        return new DemoDay(season, Duration.between(now, left));
    }

    Clock clock(Clock real) {
        return ahead.isZero()
                ? real
                : new PretendedClock(real, ahead, season, standsOn(season).minusDays(DAYS_INTO_THE_SEASON));
    }

    private static LocalDate standsOn(int season) {
        return LocalDate.of(season, Month.MAY, 8);
    }
}
