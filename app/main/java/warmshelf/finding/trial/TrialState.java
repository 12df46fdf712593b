package warmshelf.finding.trial;

/** How far a trial is. */
public enum TrialState {
    /** Nobody carries a block of it yet. */
    NOBODY("waits for somebody"),
    /** All its sowings were withdrawn. */
    CALLED_OFF("called off"),
    PLANNED("not sown yet"),
    UNDER_WAY("not finished"),
    FINISHED("finished");

    private final String title;

    TrialState(String title) {
        this.title = title;
    }

    /** For a list. */
    public String title() {
        return title;
    }
}
