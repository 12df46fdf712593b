package warmshelf.finding.statistics;

/**
 * What a test of "no difference" came to.
 *
 * @param chiSquare the statistic, about chi-square with {@code df} degrees of freedom if there is no difference
 * @param p the chance of a statistic as large or larger if there is no difference
 */
public record TestOutcome(double chiSquare, int df, double p) {}
