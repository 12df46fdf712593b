package warmshelf.shelf;

/**
 * What a coordinator says of a mat.
 *
 * @param lowC lowest set-point its thermostat offers, °C
 * @param highC highest set-point, °C
 * @param usualC set-point for the first thing that lies on it, °C
 */
public record MatDraft(
        String name, int walkOrder, int places, double lowC, double highC, int watts, double usualC, LightAbove light) {

    /** A mat of whose light nothing is said. */
    public MatDraft(String name, int walkOrder, int places, double lowC, double highC, int watts, double usualC) {
        this(name, walkOrder, places, lowC, highC, watts, usualC, LightAbove.NOT_KNOWN);
    }

    /** The same kind of mat by another name, elsewhere on its shelf. */
    MatDraft named(String otherName, int otherOrder) {
        return new MatDraft(otherName, otherOrder, places, lowC, highC, watts, usualC, light);
    }
}
