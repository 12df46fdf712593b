package warmshelf.finding.prediction;

import java.util.Locale;
import warmshelf.finding.ShareWords;
import warmshelf.finding.statistics.ObservedShare;

/**
 * A told chance and how often it came true, in figures and in pixels of the calibration picture.
 *
 * @param of what was told, in words; empty where the chance says it all
 * @param told in 100
 * @param percent that came true, in 100
 * @param interval of it, for example '68–94'
 * @param low of the interval's lower end, which lies below its upper one
 */
record ChancePoint(
        String of,
        int told,
        int came,
        int outOf,
        int percent,
        String interval,
        String x,
        String y,
        String low,
        String high) {
    private static final double LEFT = 44;
    private static final double SIDE = 180;
    private static final double BOTTOM = 190;

    static ChancePoint of(String what, double chance, ObservedShare came) {
        return new ChancePoint(
                what,
                ShareWords.percent(chance),
                came.came(),
                came.of(),
                ShareWords.percent(came.value()),
                ShareWords.range(came.wilson()),
                pixel(LEFT + SIDE * chance),
                pixel(y(came.value())),
                pixel(y(came.wilson().low())),
                pixel(y(came.wilson().high())));
    }

    static ChancePoint of(ToldRange range) {
        return of("", range.chance(), range.held());
    }

    private static double y(double share) {
        return BOTTOM - SIDE * share;
    }

    private static String pixel(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }
}
