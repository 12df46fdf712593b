package warmshelf.check;

/**
 * What the phone is told of one entry.
 *
 * @param id as the phone sent it
 * @param answer 'kept', 'kept-before' or 'refused'
 * @param sentence why it was refused; else what the person should know, or empty
 * @param again whether sending the same once more can help
 */
public record SentAnswer(String id, String answer, String sentence, boolean again) {
    static final String KEPT = "kept";
    static final String KEPT_BEFORE = "kept-before";
    static final String REFUSED = "refused";

    static SentAnswer refused(String id, String sentence, boolean again) {
        return new SentAnswer(id, REFUSED, sentence, again);
    }

    boolean isRefused() {
        return answer.equals(REFUSED);
    }

    /** The same with one more thing to know. */
    SentAnswer with(String remark) {
        return new SentAnswer(id, answer, (sentence + " " + remark).strip(), again);
    }
}
