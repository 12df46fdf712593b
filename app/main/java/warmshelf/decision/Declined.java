package warmshelf.decision;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Undoes the transaction it is thrown in, because somebody is told no. {@link Decision#of} catches it. */
public final class Declined extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Decision<?> decision;

    private Declined(Decision<?> decision) {
        super(words(decision), null, false, false);
        this.decision = decision;
    }

    /** As somebody was told no. */
    static Declined of(Decision<?> no) {
        return new Declined(no);
    }

    /** A rule says no. */
    public static Declined refused(Message reason) {
        return new Declined(new Decision.Refused<>(reason));
    }

    /** Things stand otherwise by now. */
    public static Declined overtaken(Message reason) {
        return new Declined(new Decision.Overtaken<>(reason));
    }

    /** What it was about is not to be had any more. */
    public static Declined gone(Message reason) {
        return new Declined(new Decision.Gone<>(reason));
    }

    /** What it was about is not there. */
    public static Declined missing() {
        return new Declined(new Decision.Missing<>());
    }

    private static String words(Decision<?> decision) {
        return decision.refusal().map(reason -> reason.words(Units.METRIC)).orElse("what it was about is not there");
    }

    /** Why; only of what was declined for a reason. */
    public Message reason() {
        return decision.refusal().orElseThrow(() -> new IllegalStateException(this));
    }

    /** The same no, said of something by its name. */
    public Declined about(Message reason) {
        if (decision instanceof Decision.Gone) {
            return gone(reason);
        }
        return decision instanceof Decision.Overtaken ? overtaken(reason) : refused(reason);
    }

    <T> Decision<T> decision() {
        return decision.map(none -> {
            throw new IllegalStateException("nothing was done", this);
        });
    }
}
