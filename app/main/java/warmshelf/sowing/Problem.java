package warmshelf.sowing;

import java.util.EnumSet;
import java.util.Set;

/** What can be wrong at a look, and what helps. Common practice throughout. */
public enum Problem {
    DRY(
            "dry",
            "too dry",
            "watering",
            "Water from below with tepid water until the surface darkens, then let it drain."),
    WET("wet", "too wet", "watering", "Tip the water off, open the lid or the bag for an hour, and give air."),
    MOULD(
            "mould",
            "mould",
            "first-look",
            "Take out the seeds with mould, move the rest into fresh damp paper, and wash your hands."
                    + " Keep your face away from mould dust, or wear a mask."),
    DAMPING_OFF(
            "damping-off",
            "damping-off (stems thin and fall)",
            "damping-off",
            "Take the fallen seedlings out with the compost around them, give air and less water."),
    TOO_HOT("too-hot", "too hot", "bottom-heat", "Turn the mat down and tell a coordinator."),
    TOO_COLD(
            "too-cold",
            "too cold",
            "bottom-heat",
            "See that the mat is on and tell a coordinator. Mind water near plugs."),
    NO_LABEL("no-label", "label missing", "labels", "Write one now: crop, variety, whose, and the day it was sown."),
    SEED_MISSING(
            "seed-missing",
            "seed missing",
            "soak",
            "Look in the seed box, and ask whoever had it last. Nothing is sown until it is found."),
    TORN(
            "torn",
            "bag or packet torn",
            "labels",
            "Put it into a sound one with its label, and count the seed that is left."),
    OTHER("other", "something else", "first-look", "Say what in the note.");

    private static final Set<Problem> BEFORE_SOWING =
            EnumSet.of(WET, MOULD, TOO_HOT, TOO_COLD, NO_LABEL, SEED_MISSING, TORN, OTHER);

    private final String word;
    private final String words;
    private final String guide;
    private final String whatHelps;

    Problem(String word, String words, String guide, String whatHelps) {
        this.word = word;
        this.words = words;
        this.guide = guide;
        this.whatHelps = whatHelps;
    }

    public String word() {
        return word;
    }

    public String words() {
        return words;
    }

    /** For whoever notes it. */
    public String whatHelps() {
        return whatHelps;
    }

    /** For whoever is told of it. */
    public String whatToDo() {
        return this == OTHER ? "Look at it, and ask whoever noted it if the note says too little." : whatHelps;
    }

    /** The word of the how-to page that tells more of it. */
    public String guide() {
        return guide;
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
