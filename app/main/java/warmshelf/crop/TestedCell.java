package warmshelf.crop;

import java.util.OptionalDouble;

/** What the trials' tables say of one temperature: an empty cell, a zero and a share without days are three things. */
sealed interface TestedCell {
    double celsius();

    /** The share 0..1 of normal seedlings; empty where none was recorded. */
    default OptionalDouble share() {
        return OptionalDouble.empty();
    }

    /** Seed came up in so many days. */
    record CameUp(double celsius, double days, OptionalDouble share) implements TestedCell {}

    /** So much of it came up, in days that are not printed. */
    record CameUpUntimed(double celsius, double counted) implements TestedCell {
        @Override
        public OptionalDouble share() {
            return OptionalDouble.of(counted);
        }
    }

    /** It was tried, and nothing grew. */
    record NothingGrew(double celsius) implements TestedCell {
        @Override
        public OptionalDouble share() {
            return OptionalDouble.of(0);
        }
    }

    /** Nobody tried. */
    record NotTested(double celsius) implements TestedCell {}
}
