package warmshelf.leaving;

import static warmshelf.leaving.LeavingSentences.SAY;

import java.util.List;

/** The kinds of things that a member may leave. */
enum LeftKind {
    /** A sowing that is sown and not over. */
    TRAY("tray", SAY.underWay()),
    /** A sowing that is not sown yet, with its request and the place promised to it. */
    REQUEST("request", SAY.notSownYet()),
    /** A day on duty that has not passed. */
    TURN("turn", SAY.daysOnDuty()),
    /** A lot of seed with something in it. */
    LOT("lot", SAY.seed());

    private final String word;
    private final String title;

    LeftKind(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** The word the database keeps and forms send. */
    public String word() {
        return word;
    }

    /** The heading a page shows. */
    public String title() {
        return title;
    }

    /** What can become of it, the usual first. */
    public List<Fate> fates() {
        return switch (this) {
            case TRAY -> List.of(Fate.HANDED_OVER, Fate.KEPT);
            case REQUEST -> List.of(Fate.WITHDRAWN, Fate.HANDED_OVER);
            case TURN -> List.of(Fate.EMPTIED, Fate.HANDED_OVER);
            case LOT -> List.of(Fate.TO_GROUP, Fate.HANDED_OVER, Fate.TAKEN_ALONG);
        };
    }

    /** What becomes of it where nobody is left to have it and nobody has decided. */
    Fate fateWithoutOwner() {
        return switch (this) {
            case TRAY -> Fate.KEPT;
            case REQUEST -> Fate.WITHDRAWN;
            case TURN -> Fate.EMPTIED;
            case LOT -> Fate.TO_GROUP;
        };
    }

    static LeftKind named(String word) {
        for (LeftKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("nothing of the kind '" + word + "' is left");
    }
}
