package warmshelf.frost.minima;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All springs or all autumns of a record. The distribution is mixed: a share of seasons has any frost, and the days of
 * those that have one are spread; so the day at a risk is read off at risk divided by that share.
 *
 * @param spring whether these are springs, whose last frost counts; otherwise autumns, whose first does
 * @param seasons those with enough readings
 * @param leftOut number of seasons with too many missing days
 */
public record FrostSide(boolean spring, List<SeasonFrost> seasons, int leftOut) {
    /** From so many seasons with frost on the days as counted are given, with fewer those of the normal fit. */
    private static final int ENOUGH_TO_COUNT = 10;

    /** Number of seasons that had a frost. */
    public int withFrost() {
        return (int) seasons.stream().filter(SeasonFrost::any).count();
    }

    /** Share of seasons with any frost; empty where no season is left. */
    public OptionalDouble anyFrost() {
        return seasons.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of((double) withFrost() / seasons.size());
    }

    /** The days of the seasons that had a frost; empty where none had. */
    Optional<DaySample> days() {
        double[] days = seasons.stream()
                .filter(SeasonFrost::any)
                .mapToDouble(SeasonFrost::number)
                .toArray();
        return days.length == 0 ? Optional.empty() : Optional.of(new DaySample(days));
    }

    /** Whether the days at a risk are counted on the record rather than read off a normal fit. */
    public boolean isCounted() {
        return withFrost() >= ENOUGH_TO_COUNT;
    }

    /** The day after which (springs) or before which (autumns) a share of the seasons has a frost; empty where fewer have any. */
    public OptionalDouble dayAt(double risk) {
        return isCounted() ? countedAt(risk) : fittedAt(risk);
    }

    /** The same by counting the record's own days. */
    public OptionalDouble countedAt(double risk) {
        return share(risk).stream()
                .map(share -> days().orElseThrow().counted(share))
                .findFirst();
    }

    /** The same by a normal fit. */
    public OptionalDouble fittedAt(double risk) {
        return share(risk).stream()
                .map(share -> days().orElseThrow().fitted(share))
                .findFirst();
    }

    /** Half the width of the 90 % interval around that day. */
    public OptionalDouble halfWidthAt(double risk) {
        return share(risk).stream()
                .map(share -> days().orElseThrow().halfWidth(share))
                .filter(Double::isFinite)
                .findFirst();
    }

    /** The share of frosts that come no later than the day at a risk. */
    private OptionalDouble share(double risk) {
        if (!(risk > 0 && risk < 1)) {
            throw new IllegalArgumentException("a risk lies between 0 and 1, was " + risk);
        }
        double any = anyFrost().orElse(0);
        // a risk of 0.5 where half the seasons have frost would ask for the first or last of all days: no such day
        if (risk >= any) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(spring ? 1 - risk / any : risk / any);
    }

    /** The middle day of the seasons that had a frost (number of a 365-day year); empty where none had. */
    public OptionalDouble medianDay() {
        return days().stream()
                .mapToDouble(days -> isCounted() ? days.counted(0.5) : days.fitted(0.5))
                .findFirst();
    }

    /** Standard deviation from year to year; empty where fewer than two seasons had a frost. */
    public OptionalDouble sdDays() {
        return days().stream()
                .mapToDouble(DaySample::sd)
                .filter(Double::isFinite)
                .findFirst();
    }

    /** The latest frost of that side on record. */
    public Optional<LocalDate> latest() {
        return extreme(true);
    }

    /** The earliest frost of that side on record. */
    public Optional<LocalDate> earliest() {
        return extreme(false);
    }

    private Optional<LocalDate> extreme(boolean late) {
        return seasons.stream()
                .filter(SeasonFrost::any)
                .reduce((a, b) -> (a.number() > b.number()) == late ? a : b)
                .map(SeasonFrost::day);
    }
}
