package warmshelf.frost;

/**
 * How cold a night must be to count. The three temperatures are those for which national services publish dates: 36, 32 and
 * 28 °F in the United States' climate normals (Normals Calculation Methodology 2020).
 */
public enum Threshold {
    /** 2.2 °C: under a still, clear sky the ground freezes while the thermometer in its shelter shows this. */
    LIGHT(2.2, "Light frost", "the ground may freeze on a still, clear night"),
    FROST(0.0, "Frost", "tender plants die"),
    /** -2.2 °C, a hard frost: what bears only light frosts is harmed; cabbage, kale and their like bear more. */
    KILLING(-2.2, "Killing frost", "celery, dill and others that bear only a light frost are harmed too");

    private final double celsius;
    private final String words;
    private final String meaning;

    Threshold(double celsius, String words, String meaning) {
        this.celsius = celsius;
        this.words = words;
        this.meaning = meaning;
    }

    /** For example 'Killing frost'. */
    public String words() {
        return words;
    }

    /** What it does, common practice. */
    public String meaning() {
        return meaning;
    }

    /** Air in a thermometer shelter at or below this counts. */
    public double celsius() {
        return celsius;
    }
}
