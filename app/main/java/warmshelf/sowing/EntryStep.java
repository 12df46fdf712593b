package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import warmshelf.guide.Advice;

/** What an entry tells of: a look, or a step that was done. */
public enum EntryStep {
    LOOK("look", SAY.looked()),
    CHILLED("chilled", SAY.putIntoCold()),
    SOAKED("soaked", SAY.putToSoak()),
    SOWN("sown", SAY.wasSown()),
    MOVED_TO_CELLS("moved-to-cells", SAY.movedToCells()),
    OFF_HEAT("off-heat", SAY.offTheHeat()),
    UNDER_LIGHT("under-light", SAY.putUnderLight()),
    /** By its grower, or by whoever does it for them: no light of the group follows the heat. */
    TAKEN_HOME("taken-home", SAY.takenHome()),
    FIRST_FEED("first-feed", ""),
    POTTED_ON("potted-on", SAY.pottedOn()),
    /** Or pinched. */
    TRIMMED("trimmed", SAY.trimmed()),
    HARDENING_OFF("hardening-off", SAY.putOutToHarden()),
    PLANTED_OUT("planted-out", SAY.plantedOut()),
    GAVE_UP("gave-up", SAY.givenUp()),
    /** Its season was closed, and nobody had written down what became of it; whoever knows may still say so. */
    NOT_RECORDED("not-recorded", SAY.notRecorded()),
    /** Takes back the entry that it supersedes, and counts for nothing itself. */
    UNDONE("undone", SAY.entryTakenBack()),
    /** A thermometer on a mat. */
    READING("reading", SAY.thermometerRead());

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
            case OFF_HEAT,
                    UNDER_LIGHT,
                    TAKEN_HOME,
                    FIRST_FEED,
                    POTTED_ON,
                    TRIMMED,
                    HARDENING_OFF,
                    PLANTED_OUT,
                    GAVE_UP -> true;
            case LOOK, CHILLED, SOAKED, SOWN, MOVED_TO_CELLS, NOT_RECORDED, UNDONE, READING -> false;
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
