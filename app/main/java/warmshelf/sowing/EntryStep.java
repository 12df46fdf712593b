package warmshelf.sowing;

import warmshelf.guide.Advice;

/** What an entry tells of: a look, or a step that was done. */
public enum EntryStep {
    LOOK("look", "looked"),
    CHILLED("chilled", "put into the cold"),
    SOAKED("soaked", "put to soak"),
    SOWN("sown", "sown"),
    MOVED_TO_CELLS("moved-to-cells", "moved to cells"),
    OFF_HEAT("off-heat", "taken off the heat"),
    UNDER_LIGHT("under-light", "put under light"),
    FIRST_FEED("first-feed", ""),
    POTTED_ON("potted-on", "potted on"),
    /** Or pinched. */
    TRIMMED("trimmed", "trimmed or pinched"),
    HARDENING_OFF("hardening-off", "put out to harden off"),
    PLANTED_OUT("planted-out", "planted out"),
    GAVE_UP("gave-up", "given up"),
    /** Takes back the entry that it supersedes, and counts for nothing itself. */
    UNDONE("undone", "taken back"),
    /** A thermometer on a mat. */
    READING("reading", "thermometer read");

    private final String word;
    private final String done;

    EntryStep(String word, String done) {
        this.word = word;
        this.done = done;
    }

    public String word() {
        return word;
    }

    /** What was done, as a page's list of entries says it. */
    public String done() {
        return this == FIRST_FEED ? Advice.fixed(Advice.stepFile("first-feed"), "done") : done;
    }

    /** Whether nothing more of the seed is waited for once this was done. */
    public boolean endsTheWait() {
        return switch (this) {
            case OFF_HEAT, UNDER_LIGHT, FIRST_FEED, POTTED_ON, TRIMMED, HARDENING_OFF, PLANTED_OUT, GAVE_UP -> true;
            case LOOK, CHILLED, SOAKED, SOWN, MOVED_TO_CELLS, UNDONE, READING -> false;
        };
    }

    /** The step of that word. */
    public static EntryStep named(String word) {
        for (EntryStep step : values()) {
            if (step.word.equals(word)) {
                return step;
            }
        }
        throw new IllegalArgumentException("no step is called '" + word + "'");
    }
}
