package warmshelf.sowing;

import java.util.EnumSet;
import java.util.Set;
import warmshelf.guide.Advice;

/** What can be wrong at a look, and what helps. Common practice throughout. */
public enum Problem {
    DRY("dry", "watering"),
    WET("wet", "watering"),
    MOULD("mould", "first-look"),
    DAMPING_OFF("damping-off", "damping-off"),
    PESTS("pests", "pests"),
    VIRUS("virus", "pests"),
    TOO_HOT("too-hot", "bottom-heat"),
    TOO_COLD("too-cold", "bottom-heat"),
    NO_LABEL("no-label", "labels"),
    SEED_MISSING("seed-missing", "soak"),
    TORN("torn", "labels"),
    OTHER("other", "first-look");

    private static final Set<Problem> SPREADING = EnumSet.of(PESTS, VIRUS);
    private static final Set<Problem> BEFORE_SOWING =
            EnumSet.of(WET, MOULD, TOO_HOT, TOO_COLD, NO_LABEL, SEED_MISSING, TORN, OTHER);

    private final String word;
    private final String guide;

    Problem(String word, String guide) {
        this.word = word;
        this.guide = guide;
    }

    private String text(String section) {
        return Advice.fixed("problems/" + word, section);
    }

    public String word() {
        return word;
    }

    public String words() {
        return text("title");
    }

    /** For whoever notes it. */
    public String whatHelps() {
        return text("what helps");
    }

    /** For whoever is told of it. */
    public String whatToDo() {
        return this == OTHER ? text("what to do") : whatHelps();
    }

    /** The word of the how-to page that tells more of it. */
    public String guide() {
        return guide;
    }

    /** Whether it goes from tray to tray over a whole rack, so that the rack is held until a coordinator clears it. */
    public boolean spreads() {
        return SPREADING.contains(this);
    }

    /** Whether it can be met with while the seed is not sown. */
    public boolean isBeforeSowing() {
        return BEFORE_SOWING.contains(this);
    }

    /** Whether it can be met with once the seed is sown. */
    public boolean isAfterSowing() {
        return this != SEED_MISSING;
    }

    /** The problem of that word. */
    public static Problem named(String word) {
        for (Problem problem : values()) {
            if (problem.word.equals(word)) {
                return problem;
            }
        }
        throw new IllegalArgumentException("no problem is called '" + word + "'");
    }
}
