package warmshelf.guide;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Who says what of one measure.
 *
 * @param verdict whether they agree, with the range where they do not
 * @param ours what the group usually does, and why; may be empty
 */
public record Comparison(String title, List<Claim> claims, String verdict, String ours) {
    private static final String DISAGREE = "Sources disagree";

    public Comparison {
        claims = List.copyOf(claims);
    }

    /** Claims that are all figures: whether they agree is reckoned. */
    static Comparison of(String title, String by, String ours, Claim... claims) {
        return new Comparison(title, List.of(claims), reckoned(List.of(claims), by), ours);
    }

    /** Claims in words: whether they agree is told. */
    static Comparison told(String title, String verdict, String ours, Claim... claims) {
        return new Comparison(title, List.of(claims), verdict, ours);
    }

    /** Whether the sources disagree, so that a page says it loudly. */
    public boolean isDisagreement() {
        return verdict.startsWith(DISAGREE);
    }

    private static String reckoned(List<Claim> claims, String by) {
        List<Amount> amounts = claims.stream()
                .flatMap(claim -> Stream.ofNullable(claim.amount()))
                .toList();
        if (amounts.size() < claims.size()) {
            throw new IllegalArgumentException("a claim is no figure: " + claims);
        }
        if (claims.size() == 1) {
            return "No second source to compare it with.";
        }
        Amount lowest = Objects.requireNonNull(
                amounts.stream().min(Comparator.comparingDouble(Amount::low)).orElse(null));
        Amount highest = Objects.requireNonNull(
                amounts.stream().max(Comparator.comparingDouble(Amount::high)).orElse(null));
        if (amounts.stream().allMatch(amount -> amount.low() == lowest.low() && amount.high() == highest.high())) {
            return "The sources agree.";
        }
        return (DISAGREE + ": %s to %s %s%s.%s")
                .formatted(
                        lowest.lowFigure(), highest.highFigure(), amounts.get(0).unit(), by, shared(amounts));
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
                ? " All of them allow %s.".formatted(from.lowFigure())
                : " All of them allow %s to %s.".formatted(from.lowFigure(), to.highFigure());
    }
}
