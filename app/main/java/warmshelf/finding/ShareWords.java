package warmshelf.finding;

import warmshelf.finding.statistics.ConfidenceInterval;

/** Shares as people read them: in 100. */
public final class ShareWords {
    private ShareWords() {}

    /** For example 87. */
    public static int percent(double share) {
        return (int) Math.round(100 * share);
    }

    /** For example '68–94'. */
    public static String range(ConfidenceInterval interval) {
        // joined, so that a narrow column does not break it
        return "%d\u2060–\u2060%d".formatted(percent(interval.low()), percent(interval.high()));
    }
}
