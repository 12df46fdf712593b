package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

/**
 * How cold a night must be to count. The three temperatures are those for which national services publish dates: 36, 32 and
 * 28 °F in the United States' climate normals (Normals Calculation Methodology 2020).
 */
public enum Threshold {
    /** 2.2 °C: under a still, clear sky the ground freezes while the thermometer in its shelter shows this. */
    LIGHT(2.2),
    FROST(0.0),
    /** -2.2 °C, a hard frost: what bears only light frosts is harmed; cabbage, kale and their like bear more. */
    KILLING(-2.2);

    private final double celsius;

    Threshold(double celsius) {
        this.celsius = celsius;
    }

    /** For example 'Killing frost'. */
    public String words() {
        return switch (this) {
            case LIGHT -> SAY.lightFrost();
            case FROST -> SAY.frost();
            case KILLING -> SAY.killingFrost();
        };
    }

    /** What it does, common practice. */
    public String meaning() {
        return switch (this) {
            case LIGHT -> SAY.lightFrostMeans();
            case FROST -> SAY.frostMeans();
            case KILLING -> SAY.killingFrostMeans();
        };
    }

    /** Air in a thermometer shelter at or below this counts. */
    public double celsius() {
        return celsius;
    }
}
