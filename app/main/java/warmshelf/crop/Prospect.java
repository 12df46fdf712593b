package warmshelf.crop;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of whether, and how soon, seed comes up at one temperature. That nobody tested it is something else than that
 * nothing grew.
 */
public sealed interface Prospect {
    /** When it is expected to come up; empty where nobody can say, or it does not. */
    default Optional<Emergence> emergence() {
        return Optional.empty();
    }

    /** Whether anybody says that it comes up. */
    default boolean comesUp() {
        return false;
    }

    /** It comes up in days that are known, or reckoned from known ones. */
    record Timed(Emergence days, Basis basis) implements Prospect {
        @Override
        public Optional<Emergence> emergence() {
            return Optional.of(days);
        }

        @Override
        public boolean comesUp() {
            return true;
        }
    }

    /**
     * It comes up by a published range of temperatures; how soon nobody has published.
     *
     * @param share of normal seedlings, where it was counted
     */
    record Untimed(OptionalDouble share) implements Prospect {
        @Override
        public boolean comesUp() {
            return true;
        }
    }

    /** It was tried there, or nearer to what suits, and nothing grew. */
    record NothingGrew() implements Prospect {}

    /** Nobody has tried it there, and no published range takes it in. */
    record NotTested() implements Prospect {}

    /** What the days rest on. */
    enum Basis {
        /** Trials at temperatures on both sides. */
        TRIAL("trial"),
        /** The days that the trade, or a coordinator, states for temperatures among which this one is. */
        STATED("stated range"),
        /** Not tested there, but within the temperatures that extension publishes; days reckoned from the nearest tested ones. */
        PUBLISHED_RANGE("published range");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        /** As {@code emerge} prints it. */
        public String word() {
            return word;
        }
    }
}
