package warmshelf.crop;

/** Says what is known of a temperature. */
public final class ProspectWords {
    private ProspectWords() {}

    /** In a word or two, as {@code emerge} prints it. */
    static String basis(Prospect prospect) {
        if (prospect instanceof Prospect.Timed timed) {
            return timed.basis().word();
        }
        if (prospect instanceof Prospect.Untimed) {
            return "days not published";
        }
        return prospect instanceof Prospect.NothingGrew ? "nothing grew" : "not tested";
    }

    /** What whoever reads the days has to know of them, in a sentence; empty where the days are published for that temperature. */
    public static String note(Prospect prospect) {
        if (prospect instanceof Prospect.Timed timed) {
            return timed.basis() == Prospect.Basis.PUBLISHED_RANGE
                    ? "Not timed at this temperature, which lies within the published range: the days are reckoned from the"
                            + " nearest that were, and may be half or twice as many."
                    : "";
        }
        if (prospect instanceof Prospect.Untimed) {
            return "Within the published range, but nobody has published how many days it takes.";
        }
        return prospect instanceof Prospect.NothingGrew
                ? "Nothing came up in the trials here, or nearer to what suits the seed."
                : "Not tested at this temperature, and outside the published range.";
    }

    /** What to say to whoever wants seed to come up where nobody can tell when, or it does not. */
    public static String instead(String crop, String asked, String comfortable, Prospect prospect) {
        if (prospect instanceof Prospect.NothingGrew) {
            return "%s does not come up at %s; its seed likes %s.".formatted(crop, asked, comfortable);
        }
        return prospect instanceof Prospect.Untimed
                ? "%s comes up at %s, but nobody has published how many days it takes; its seed likes %s."
                        .formatted(crop, asked, comfortable)
                : "Nothing is published of whether %s comes up at %s; its seed likes %s."
                        .formatted(crop, asked, comfortable);
    }
}
