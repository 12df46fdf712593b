package warmshelf.sowing;

/** What can be wrong at a look, and what helps. Common practice throughout. */
public enum Problem {
    DRY("dry", "too dry", "Water from below with tepid water until the surface darkens, then let it drain."),
    WET("wet", "too wet", "Tip the water off, open the lid or the bag for an hour, and give air."),
    MOULD(
            "mould",
            "mould",
            "Take out the seeds with mould, move the rest into fresh damp paper, and wash your hands."
                    + " Keep your face away from mould dust, or wear a mask."),
    DAMPING_OFF(
            "damping-off",
            "damping-off (stems thin and fall)",
            "Take the fallen seedlings out with the compost around them, give air and less water."),
    TOO_HOT("too-hot", "too hot", "Turn the mat down and tell a coordinator."),
    TOO_COLD("too-cold", "too cold", "See that the mat is on and tell a coordinator. Mind water near plugs."),
    NO_LABEL("no-label", "label missing", "Write one now: crop, variety, whose, and the day it was sown."),
    OTHER("other", "something else", "Say what in the note.");

    private final String word;
    private final String words;
    private final String whatHelps;

    Problem(String word, String words, String whatHelps) {
        this.word = word;
        this.words = words;
        this.whatHelps = whatHelps;
    }

    public String word() {
        return word;
    }

    public String words() {
        return words;
    }

    public String whatHelps() {
        return whatHelps;
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
