package warmshelf.crop;

/** What a coordinator rests a crop's answer to warmth on. */
public sealed interface OwnEmergence {
    /** The reference's own figures of this crop. */
    record AsReference() implements OwnEmergence {}

    /** The figures of another crop of the reference, a near relative. */
    record Like(String cropId) implements OwnEmergence {}

    /**
     * The range that the trade states, where there is no table: read as {@link StatedRangeResponse} says.
     *
     * @param daysMin by when the first are up
     * @param daysMax by when the last are up
     * @param at the temperatures for which it is said
     */
    record Stated(double daysMin, double daysMax, CelsiusRange at) implements OwnEmergence {}
}
