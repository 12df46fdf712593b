package warmshelf.guide;

import static warmshelf.guide.GuideSentences.SAY;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Who says what of one measure.
 *
 * @param agreed whether they agree, and in which words, with the range where they do not
 * @param ours what the group usually does, and why; may be empty
 */
public record Comparison(String title, List<Claim> claims, Verdict agreed, String ours) {

    public Comparison {
        claims = List.copyOf(claims);
    }

    /** Whether sources disagree, and what is said of it. */
    public record Verdict(boolean disagreement, String words) {
        static Verdict disagreeing(String how) {
            return new Verdict(true, SAY.disagree(how));
        }

        static Verdict otherwise(String words) {
            return new Verdict(false, words);
        }
    }

    /** What is said of it. */
    public String verdict() {
        return agreed.words();
    }

    /** Claims that are all figures: whether they agree is reckoned. */
    static Comparison of(String title, String by, String ours, List<Claim> claims) {
        return new Comparison(title, claims, reckoned(claims, by), ours);
    }

    /** Claims in words that do not disagree: what there is to say of them is told. */
    static Comparison told(String title, String verdict, String ours, List<Claim> claims) {
        return new Comparison(title, claims, Verdict.otherwise(verdict), ours);
    }

    /** Claims in words that disagree: how they do is told. */
    static Comparison disagreeing(String title, String how, String ours, List<Claim> claims) {
        return new Comparison(title, claims, Verdict.disagreeing(how), ours);
    }

    /** Whether the sources disagree, so that a page says it loudly. */
    public boolean isDisagreement() {
        return agreed.disagreement();
    }

    private static Verdict reckoned(List<Claim> claims, String by) {
        List<Amount> amounts = claims.stream()
                .flatMap(claim -> Stream.ofNullable(claim.amount()))
                .toList();
        if (amounts.size() < claims.size()) {
            throw new IllegalArgumentException("a claim is no figure: " + claims);
        }
        if (claims.size() == 1) {
            return Verdict.otherwise(SAY.noSecondSource());
        }
        Amount lowest = Objects.requireNonNull(
                amounts.stream().min(Comparator.comparingDouble(Amount::low)).orElse(null));
        Amount highest = Objects.requireNonNull(
                amounts.stream().max(Comparator.comparingDouble(Amount::high)).orElse(null));
        if (amounts.stream().allMatch(amount -> amount.low() == lowest.low() && amount.high() == highest.high())) {
            return Verdict.otherwise(SAY.sourcesAgree());
        }
        String range = SAY.sourcesRange(
                lowest.lowFigure(), highest.highFigure(), amounts.get(0).unit() + by);
        return Verdict.disagreeing((range + " " + shared(amounts)).strip());
    }

    /** What every source allows, where there is such a thing. */
    private static String shared(List<Amount> amounts) {
        Amount from = Objects.requireNonNull(
                amounts.stream().max(Comparator.comparingDouble(Amount::low)).orElse(null));
        Amount to = Objects.requireNonNull(
                amounts.stream().min(Comparator.comparingDouble(Amount::high)).orElse(null));
        if (from.low() > to.high()) {
            return "";
        }
        return from.low() == to.high()
                ? SAY.allAllow(from.lowFigure())
                : SAY.allAllowRange(from.lowFigure(), to.highFigure());
    }
}
