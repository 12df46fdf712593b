package warmshelf.demo;

import warmshelf.decision.Decision;
import warmshelf.words.Units;

/** What the demo group expects to be done. */
final class DemoDecisions {
    private DemoDecisions() {}

    /**
     * What came of it.
     *
     * @throws IllegalStateException when it was not done; the demo's tables do not fit together then
     */
    static <T> T done(Decision<T> decision) {
        if (decision instanceof Decision.Done<T> done) {
            return done.value();
        }
        throw new IllegalStateException("the demo's tables do not fit together: "
                + decision.refusal().map(reason -> reason.words(Units.METRIC)).orElse("something is not there"));
    }
}
