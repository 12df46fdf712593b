package warmshelf.check;

import java.util.UUID;
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
     * A look that says nothing beyond one that the same person entered for that day already; nothing was added.
     *
     * @param entry the one that stands for it
     */
    record Repeated(UUID entry) implements TickOutcome {
        static final String SENTENCE = "You had entered the same look already, so nothing was added.";
    }

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
