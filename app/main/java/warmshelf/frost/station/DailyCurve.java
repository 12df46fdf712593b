package warmshelf.frost.station;

import java.time.YearMonth;
import java.util.Arrays;
import warmshelf.frost.Cholesky;

/**
 * The usual minimum of each day of a 365-day year, drawn through twelve monthly means: a mean and three waves (of a year,
 * half a year and a third of one) whose own monthly means come nearest to those given.
 */
final class DailyCurve {
    static final int DAYS = 365;
    private static final int WAVES = 3;
    private static final int TERMS = 1 + 2 * WAVES;
    private static final int MONTHS = 12;
    private static final int COMMON_YEAR = 2001;

    /** The same for every place, and asked for each day of thousands of places when stations are checked. */
    private static final double[][] TERMS_BY_DAY = termsByDay();

    private static final double[][] TERMS_BY_MONTH = termsByMonth();

    private final double[] celsius = new double[DAYS];
    private final double mean;
    private final double amplitude;

    /**
     * Fits the curve.
     *
     * @param means mean daily minimum of the twelve months, January first
     */
    DailyCurve(double... means) {
        if (means.length != MONTHS) {
            throw new IllegalArgumentException("twelve months make a year, there were " + means.length);
        }
        double[] amounts = amounts(means);
        for (int day = 0; day < DAYS; day++) {
            for (int term = 0; term < TERMS; term++) {
                celsius[day] += amounts[term] * TERMS_BY_DAY[day][term];
            }
        }
        mean = Arrays.stream(celsius).average().orElseThrow();
        amplitude = (Arrays.stream(celsius).max().orElseThrow()
                        - Arrays.stream(celsius).min().orElseThrow())
                / 2;
    }

    private static double[][] termsByDay() {
        double[][] terms = new double[DAYS][TERMS];
        for (int day = 0; day < DAYS; day++) {
            for (int term = 0; term < TERMS; term++) {
                terms[day][term] = term(term, day);
            }
        }
        return terms;
    }

    private static double[][] termsByMonth() {
        double[][] terms = new double[MONTHS][];
        for (int month = 0; month < MONTHS; month++) {
            terms[month] = monthlyMeans(month);
        }
        return terms;
    }

    private static double[] amounts(double[] means) {
        double[][] matrix = new double[TERMS][TERMS];
        double[] right = new double[TERMS];
        for (int month = 0; month < MONTHS; month++) {
            double[] terms = TERMS_BY_MONTH[month];
            for (int i = 0; i < TERMS; i++) {
                right[i] += terms[i] * means[month];
                for (int j = 0; j < TERMS; j++) {
                    matrix[i][j] += terms[i] * terms[j];
                }
            }
        }
        return new Cholesky(matrix).solve(right);
    }

    private static double[] monthlyMeans(int month) {
        YearMonth calendar = YearMonth.of(COMMON_YEAR, month + 1);
        int first = calendar.atDay(1).getDayOfYear() - 1;
        double[] terms = new double[TERMS];
        for (int day = first; day < first + calendar.lengthOfMonth(); day++) {
            for (int term = 0; term < TERMS; term++) {
                terms[term] += TERMS_BY_DAY[day][term] / calendar.lengthOfMonth();
            }
        }
        return terms;
    }

    /** The waves in the order mean, cosine and sine of the first, of the second, of the third; a day counts at its middle. */
    private static double term(int term, int day) {
        int wave = (term + 1) / 2;
        double angle = 2 * Math.PI * wave * (day + 0.5) / DAYS;
        return term % 2 == 1 ? Math.cos(angle) : term == 0 ? 1 : Math.sin(angle);
    }

    /** The usual minimum of a day, 1 January being 0; days beyond the year's end go round. */
    double on(int day) {
        return celsius[Math.floorMod(day, DAYS)];
    }

    double mean() {
        return mean;
    }

    /** Half the way from the coldest day to the warmest. */
    double amplitude() {
        return amplitude;
    }
}
