package warmshelf.frost;

/**
 * How cold a night must be to count. The three temperatures are those for which national services publish dates: 36, 32 and
 * 28 °F in the United States' climate normals (Normals Calculation Methodology 2020).
 */
public enum Threshold {
    /** 2.2 °C: under a still, clear sky the ground freezes while the thermometer in its shelter shows this. */
    LIGHT(2.2),
    FROST(0.0),
    /** -2.2 °C: what is half hardy dies too. */
    KILLING(-2.2);

    private final double celsius;

    Threshold(double celsius) {
        this.celsius = celsius;
    }

    /** Air in a thermometer shelter at or below this counts. */
    public double celsius() {
        return celsius;
    }
}
