package warmshelf.timeline;

/** Writes measures in the reader's units. */
public interface Measures {
    /** For example '26 °C' or '79 °F'. */
    String temperature(double celsius);

    /** For example '24–30 °C'. */
    String temperatureRange(double lowC, double highC);

    /** For example '0.6 cm' or '0.25 in'. */
    String length(double millimetres);
}
