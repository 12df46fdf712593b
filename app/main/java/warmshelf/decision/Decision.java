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

    /** The same decision about something else made of what was done. */
    default <R> Decision<R> map(Function<T, R> change) {
        if (this instanceof Done<T> done) {
            return new Done<>(change.apply(done.value()));
        }
        if (this instanceof Refused<T> refused) {
            return new Refused<>(refused.reason());
        }
        if (this instanceof Gone<T> gone) {
            return new Gone<>(gone.reason());
        }
        return this instanceof Overtaken<T> overtaken ? new Overtaken<>(overtaken.reason()) : new Missing<>();
    }
}
