package warmshelf.frost;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * When one season's frost comes: a mixed distribution as national services use it. A share of seasons has any frost at all;
 * the day in such a season is normal. The spread is the root of the sum of squares of its three parts.
 *
 * @param anyFrost share 0..1 of seasons with any frost
 * @param medianDay day of a 365-day year, in seasons with frost
 * @param adjustmentDays days that the elevation of the point moved the median
 * @param daysPer100M that change for each 100 m upward
 * @param yearSdDays standard deviation from year to year
 * @param stationScatterDays standard deviation between near stations and the surface
 * @param elevationSdDays standard deviation that comes from not knowing the elevation well
 */
public record FrostSeason(
        double anyFrost,
        double medianDay,
        double adjustmentDays,
        double daysPer100M,
        double yearSdDays,
        double stationScatterDays,
        double elevationSdDays) {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    public FrostSeason {
        if (!(anyFrost >= 0 && anyFrost <= 1)) {
            throw new IllegalArgumentException("a share lies between 0 and 1, was " + anyFrost);
        }
        if (!(yearSdDays > 0)) {
            throw new IllegalArgumentException("frost dates differ from year to year, their spread was " + yearSdDays);
        }
    }

    /** Standard deviation in days with all three parts. */
    public double sdDays() {
        return Math.sqrt(
                yearSdDays * yearSdDays + stationScatterDays * stationScatterDays + elevationSdDays * elevationSdDays);
    }

    /** The same season so many days later, negative for earlier. */
    public FrostSeason movedBy(double days) {
        return new FrostSeason(
                anyFrost,
                medianDay + days,
                adjustmentDays,
                daysPer100M,
                yearSdDays,
                stationScatterDays,
                elevationSdDays);
    }

    /** The same with another share of seasons that have any frost. */
    public FrostSeason withAnyFrost(double share) {
        return new FrostSeason(
                share, medianDay, adjustmentDays, daysPer100M, yearSdDays, stationScatterDays, elevationSdDays);
    }

    /** The same known better or worse. */
    public FrostSeason withScatter(double stationDays, double elevationDays) {
        return new FrostSeason(
                anyFrost, medianDay, adjustmentDays, daysPer100M, yearSdDays, stationDays, elevationDays);
    }

    /** How far the middle day may be off for one garden, a standard deviation in days: not counting how years differ. */
    public double placeSdDays() {
        return Math.hypot(stationScatterDays, elevationSdDays);
    }

    /** The day after which frost comes with this chance: chance = anyFrost x P(D > day | frost). */
    OptionalDouble dayExceededWith(double chance) {
        check(chance);
        return chance >= anyFrost ? OptionalDouble.empty() : OptionalDouble.of(day(1 - chance / anyFrost));
    }

    /** The day before which frost comes with this chance: chance = anyFrost x P(D < day | frost). */
    public OptionalDouble dayReachedWith(double chance) {
        check(chance);
        return chance >= anyFrost ? OptionalDouble.empty() : OptionalDouble.of(day(chance / anyFrost));
    }

    double chanceAfter(double day) {
        return anyFrost * (1 - NORMAL.cumulativeProbability((day - medianDay) / sdDays()));
    }

    /** The chance, 0..1, that a season has had a frost before a day of a 365-day year. */
    public double chanceBefore(double day) {
        return anyFrost * NORMAL.cumulativeProbability((day - medianDay) / sdDays());
    }

    private double day(double share) {
        return medianDay + sdDays() * NORMAL.inverseCumulativeProbability(share);
    }

    private static void check(double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("a risk lies between 0 and 1, was " + chance);
        }
    }
}
