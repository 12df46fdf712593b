package warmshelf.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import warmshelf.sowing.Problem;

/**
 * What somebody wrote into a box of the sheet, and somebody typed: a count, that nothing was new, that a step was done, a
 * problem, or a count and a problem.
 *
 * @param count as typed; empty: not counted
 * @param nothing looked at, and nothing was new
 */
record CellText(
        String count,
        boolean nothing,
        boolean done,
        @Nullable Problem problem) {
    private static final Set<String> NOTHING = Set.of("n", "no", "none", "nothing", "ok", "x", "-", "–", "/", "✓");
    private static final Set<String> DONE = Set.of("d", "done");
    private static final Set<String> SOME_PROBLEM = Set.of("p", "problem");
    private static final int LEAST_LETTERS = 3;

    /** What was typed; empty when it cannot be read. */
    static Optional<CellText> read(String typed) {
        String count = "";
        boolean nothing = false;
        boolean done = false;
        Problem problem = null;
        List<String> words = Arrays.stream(
                        typed.toLowerCase(Locale.ROOT).strip().split("[\\s,;+]+"))
                .toList();
        for (String word : words) {
            Optional<Problem> named = problem(word);
            if (word.matches("\\d{1,6}") && count.isEmpty()) {
                count = word;
            } else if (NOTHING.contains(word)) {
                nothing = true;
            } else if (DONE.contains(word)) {
                done = true;
            } else if (named.isPresent() && problem == null) {
                problem = named.get();
            } else {
                return Optional.empty();
            }
        }
        boolean both = nothing && (done || !count.isEmpty());
        return both ? Optional.empty() : Optional.of(new CellText(count, nothing, done, problem));
    }

    /** By its word or the first letters of it, where only one begins so. */
    private static Optional<Problem> problem(String word) {
        if (SOME_PROBLEM.contains(word)) {
            return Optional.of(Problem.OTHER);
        }
        List<Problem> begun = Arrays.stream(Problem.values())
                .filter(problem ->
                        word.length() >= LEAST_LETTERS && problem.word().startsWith(word))
                .toList();
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }
}
