package warmshelf.finding.statistics;

/** The range that holds a figure with a stated confidence; {@code low <= high}. */
public record ConfidenceInterval(double low, double high) {
    /** Whether a figure lies within, its ends included. */
    public boolean holds(double figure) {
        return low <= figure && figure <= high;
    }
}
