package warmshelf.testing;

import warmshelf.decision.Decision;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** What tests expect to be done. */
public final class Decided {
    private Decided() {}

    /** It was not done; the message says why, in metric units. */
    public static class NotDone extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final transient Decision<?> decision;

        NotDone(Decision<?> decision) {
            super(decision.refusal().map(reason -> reason.words(Units.METRIC)).orElse("nothing there"));
            this.decision = decision;
        }

        /** Why. */
        public Message reason() {
            return decision.refusal().orElseThrow();
        }
    }

    /** It was not done because somebody else was quicker. */
    public static final class TooLate extends NotDone {
        private static final long serialVersionUID = 1;

        TooLate(Decision<?> decision) {
            super(decision);
        }
    }

    /** What came of it; an exception where it was not done. */
    public static <T> T done(Decision<T> decision) {
        if (decision instanceof Decision.Done<T> done) {
            return done.value();
        }
        throw decision instanceof Decision.Overtaken ? new TooLate(decision) : new NotDone(decision);
    }
}
