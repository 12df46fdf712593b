package warmshelf.words;

/** Who sees which name of a person: coordinators, and the person, the whole; everybody else what the person is called. */
public final class SeenName {
    private SeenName() {}

    /**
     * The name to show.
     *
     * @param called what other members see
     * @param whole whether the reader is a coordinator, or the person
     */
    public static String of(String name, String called, boolean whole) {
        return whole ? name : called;
    }
}
