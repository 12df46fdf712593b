package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

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
            return timed.basis() == Prospect.Basis.PUBLISHED_RANGE ? SAY.notTimed() : "";
        }
        if (prospect instanceof Prospect.Untimed) {
            return SAY.daysNotPublished();
        }
        return prospect instanceof Prospect.NothingGrew ? SAY.nothingCameUp() : SAY.notTested();
    }

    /** What to say to whoever wants seed to come up where nobody can tell when, or it does not. */
    public static String instead(String crop, String asked, String comfortable, Prospect prospect) {
        if (prospect instanceof Prospect.NothingGrew) {
            return SAY.doesNotComeUp(crop, asked, comfortable);
        }
        return prospect instanceof Prospect.Untimed
                ? SAY.comesUpUntimed(crop, asked, comfortable)
                : SAY.nothingPublished(crop, asked, comfortable);
    }
}
