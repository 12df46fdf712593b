package warmshelf.finding;

/** Why the counts of a sowing do not give a curve, or only with care. */
public enum CountTrouble {
    /** Nobody counted what this curve is of. */
    NOT_COUNTED(true),
    /** A later count is lower than one before it: one of the two is wrong. */
    FELL(true),
    /** More were counted than were sown. */
    MORE_THAN_SOWN(true),
    /** Seeds sprouted within a stretch of two weeks or more in which nobody counted. */
    WEEKS_BETWEEN(false);

    private final boolean withholds;

    CountTrouble(boolean withholds) {
        this.withholds = withholds;
    }

    /** Whether no figure is worked out because of it. */
    public boolean withholds() {
        return withholds;
    }
}
