package warmshelf.duty;

/**
 * What came of asking for a swap or answering one.
 *
 * @param done whether it was done; otherwise the sentence says why not
 */
public record SwapOutcome(boolean done, String sentence) {
    static SwapOutcome done(String sentence) {
        return new SwapOutcome(true, sentence);
    }

    static SwapOutcome refused(String sentence) {
        return new SwapOutcome(false, sentence);
    }
}
