package warmshelf.check;

import java.util.UUID;

/**
 * What the phone is told of one entry.
 *
 * @param id as the phone sent it
 * @param answer 'kept', 'kept-before' or 'refused'
 * @param sentence why it was refused; else what the person should know, or empty
 * @param again whether sending the same once more can help
 * @param entry the id under which it stands, where that is another than it was sent under; else empty
 */
public record SentAnswer(String id, String answer, String sentence, boolean again, String entry) {
    static final String KEPT = "kept";
    private static final String KEPT_BEFORE = "kept-before";
    private static final String REFUSED = "refused";

    static SentAnswer kept(String id, boolean before, String remark) {
        return new SentAnswer(id, before ? KEPT_BEFORE : KEPT, remark, false, "");
    }

    public boolean wasRefused() {
        return answer.equals(REFUSED);
    }

    /** Whether something was added. */
    boolean isNew() {
        return answer.equals(KEPT);
    }

    /** It says nothing that is not kept already. */
    static SentAnswer repeated(String id, UUID entry) {
        return new SentAnswer(id, KEPT_BEFORE, CheckSentences.SAY.sameLook(), false, entry.toString());
    }

    static SentAnswer refused(String id, String sentence, boolean again) {
        return new SentAnswer(id, REFUSED, sentence, again, "");
    }

    /** The same with one more thing to know. */
    SentAnswer with(String remark) {
        return new SentAnswer(id, answer, (sentence + " " + remark).strip(), again, entry);
    }
}
