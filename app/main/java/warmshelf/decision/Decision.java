package warmshelf.decision;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import warmshelf.words.Message;

/**
 * What became of something that somebody asked for. Stores and cores return it; only pages turn it into words and a status.
 *
 * @param <T> what there is to tell when it was done
 */
public sealed interface Decision<T> {

    /** It is done, and kept. */
    record Done<T>(T value) implements Decision<T> {}

    /** A rule says no; the same asked again gets the same answer. */
    record Refused<T>(Message reason) implements Decision<T> {}

    /** Things stand otherwise by now than the person who asked could know; the same may be right later. */
    record Overtaken<T>(Message reason) implements Decision<T> {}

    /** What it was about was there once and is not to be had any more, also not later. */
    record Gone<T>(Message reason) implements Decision<T> {}

    /** What it was about is not there, or not for this person. */
    record Missing<T>() implements Decision<T> {}

    /** Does a piece of work, most often a transaction, that {@link Declined} undoes. */
    static <T> Decision<T> of(Supplier<T> work) {
        try {
            return new Done<>(work.get());
        } catch (Declined declined) {
            return declined.decision();
        }
    }

    /**
     * What was done.
     *
     * @throws Declined when it was not; it undoes the transaction of which this is a part
     */
    default T orDecline() {
        if (this instanceof Done<T> done) {
            return done.value();
        }
        throw Declined.of(this);
    }

    /** Why it was not done; empty when it was, or when there is nothing it could be about. */
    default Optional<Message> refusal() {
        if (this instanceof Refused<T> refused) {
            return Optional.of(refused.reason());
        }
        if (this instanceof Gone<T> gone) {
            return Optional.of(gone.reason());
        }
        return this instanceof Overtaken<T> overtaken ? Optional.of(overtaken.reason()) : Optional.empty();
    }

    /** What is decided of what was done; the same no where nothing was. */
    default <R> Decision<R> then(Function<T, Decision<R>> next) {
        return this instanceof Done<T> done ? next.apply(done.value()) : same();
    }

    /** The same decision about something else made of what was done. */
    default <R> Decision<R> map(Function<T, R> change) {
        return this instanceof Done<T> done ? new Done<>(change.apply(done.value())) : same();
    }

    /** The same no, of something of another kind. */
    private <R> Decision<R> same() {
        if (this instanceof Refused<T> refused) {
            return new Refused<>(refused.reason());
        }
        if (this instanceof Gone<T> gone) {
            return new Gone<>(gone.reason());
        }
        return this instanceof Overtaken<T> overtaken ? new Overtaken<>(overtaken.reason()) : new Missing<>();
    }
}
