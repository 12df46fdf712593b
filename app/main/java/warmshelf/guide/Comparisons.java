package warmshelf.guide;

import java.util.List;

/** Who says what of one measure, for the tables of an article. */
public class Comparisons {
    /** Claims that are all figures: whether they agree is reckoned. */
    public Comparison reckoned(String title, String by, List<Claim> claims, String ours) {
        return Comparison.of(title, by, ours, claims);
    }

    /** Claims in words that do not disagree: what there is to say of them is told. */
    public Comparison told(String title, List<Claim> claims, String verdict, String ours) {
        return Comparison.told(title, verdict, ours, claims);
    }

    /** Claims in words that disagree: how they do is told. */
    public Comparison disagreeing(String title, List<Claim> claims, String how, String ours) {
        return Comparison.disagreeing(title, how, ours, claims);
    }
}
