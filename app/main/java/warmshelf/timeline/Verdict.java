package warmshelf.timeline;

/** Whether there is still time to sow, or for what was sown. */
public enum Verdict {
    /** Today is not after the latest sowing, and the harvest comes before a frost that kills the crop, as a rule. */
    IN_TIME("in time"),
    /** Later than usual, but it still comes to a harvest, or to a season in the garden. */
    HURRY("hurry"),
    /** Something is likely to be picked, but a frost may well take it, or half of it. */
    TIGHT("tight"),
    /** Sowing no longer makes sense; a note says what does. */
    TOO_LATE("too late");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
