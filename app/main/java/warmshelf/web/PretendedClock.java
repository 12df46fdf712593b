package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import warmshelf.words.DayWords;

/**
 * A clock that runs as fast as the real one but shows another day, as the demo's does. Every page says so, by
 * {@link #words}, because no date on it is today's.
 */
public final class PretendedClock extends Clock {
    private final Clock real;
    private final Duration ahead;
    private final int season;
    private final LocalDate firstDay;

    /**
     * @param ahead of the real clock; negative: behind it
     * @param season named by the year of planting out
     * @param firstDay of that season
     */
    public PretendedClock(Clock real, Duration ahead, int season, LocalDate firstDay) {
        this.real = real;
        this.ahead = ahead;
        this.season = season;
        this.firstDay = firstDay;
    }

    /** What a reader must know of a page on which this day stands as today. */
    public String words(LocalDate today) {
        return SAY.pretends(
                DayWords.withWeekdayInFull(today),
                ChronoUnit.DAYS.between(firstDay, today) + 1,
                String.valueOf(season));
    }

    /** What such a clock says of a day; empty for a clock that pretends nothing. */
    static String words(Clock clock, LocalDate today) {
        return clock instanceof PretendedClock pretended ? pretended.words(today) : "";
    }

    /** How far a clock is ahead of the real one on purpose; zero for one that pretends nothing. */
    public static Duration aheadOf(Clock clock) {
        return clock instanceof PretendedClock pretended ? pretended.ahead : Duration.ZERO;
    }

    @Override
    public Instant instant() {
        return real.instant().plus(ahead);
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return new PretendedClock(real.withZone(zone), ahead, season, firstDay);
    }
}
