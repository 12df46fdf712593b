package warmshelf.sowing;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A sowing's wish for seed that is not simply there: it is another member's, or it went to others meanwhile.
 *
 * @param owner whose lot it is, by name; null: the group's
 * @param asked how many seeds
 * @param given how many of them the owner gives; null: not answered, or none
 * @param reason what the owner said to it, or empty
 */
public record LotRequest(
        UUID sowingId,
        UUID lotId,
        @Nullable String owner,
        State state,
        int asked,
        @Nullable Integer given,
        String reason) {

    /** Where the answer stands. */
    public enum State {
        WAITING("waiting"),
        GIVEN("given"),
        REFUSED("refused"),
        /** The sowing had been put aside, and when it came back others had its seed. */
        GONE("gone");

        /** In these the sowing holds its seed. */
        static final List<String> HOLDING = List.of(WAITING.word, GIVEN.word);

        private final String word;

        State(String word) {
            this.word = word;
        }

        /** The word the database keeps. */
        public String word() {
            return word;
        }

        static State named(String word) {
            for (State state : values()) {
                if (state.word.equals(word)) {
                    return state;
                }
            }
            throw new IllegalArgumentException("no request for seed is '" + word + "'");
        }
    }

    public boolean isWaiting() {
        return state == State.WAITING;
    }

    public boolean isGranted() {
        return state == State.GIVEN;
    }

    public boolean isRefused() {
        return state == State.REFUSED;
    }

    /** Whether the sowing has no seed and needs another lot. */
    public boolean isWithoutSeed() {
        return state == State.REFUSED || state == State.GONE;
    }
}
