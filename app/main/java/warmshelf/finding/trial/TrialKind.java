package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import java.util.Arrays;
import java.util.List;

/** What differs between the ways of a trial. */
public enum TrialKind {
    /** Cells, or a bag of damp paper. */
    METHOD("method"),
    /** A mat, or a room. */
    HEAT("heat"),
    /** Degrees of the mat. */
    WARMTH("warmth"),
    /** Soaked the evening before, or sown dry. */
    SOAK("soak");

    private final String word;

    TrialKind(String word) {
        this.word = word;
    }

    /** The word that the database and forms keep. */
    public String word() {
        return word;
    }

    /** For a title, such as 'Tray or bag'. */
    public String title() {
        return switch (this) {
            case METHOD -> SAY.method();
            case HEAT -> SAY.heat();
            case WARMTH -> SAY.warmth();
            case SOAK -> SAY.soak();
        };
    }

    /** Whether all ways can lie side by side; else warmth itself is the question. */
    public boolean liesTogether() {
        return this == METHOD || this == SOAK;
    }

    /** The words of all of them. */
    static List<String> words() {
        return Arrays.stream(values()).map(TrialKind::word).toList();
    }

    /** The kind of that word. */
    static TrialKind named(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no kind of trial is '" + word + "'"));
    }
}
