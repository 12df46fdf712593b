package warmshelf.check;

import warmshelf.sowing.SowingStage;

/** What became of a tick. */
public sealed interface TickOutcome {
    /**
     * Kept.
     *
     * @param again the same tick had been kept before; nothing was added
     * @param remark what the person should know about the space, or empty
     */
    record Kept(SowingStage stage, boolean again, String remark) implements TickOutcome {}

    /**
     * Not kept, with the reason.
     *
     * @param again whether sending the same once more can help, when something else has changed by then
     */
    record Refused(int status, String sentence, boolean again) implements TickOutcome {
        public Refused(int status, String sentence) {
            this(status, sentence, false);
        }
    }
}
