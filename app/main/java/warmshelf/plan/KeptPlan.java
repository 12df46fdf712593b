package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.time.OffsetDateTime;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.SeasonPlan;

/**
 * A plan as it is kept.
 *
 * @param requests how many it was asked about
 * @param withLight whether who asked for a place under a light after the mat must get one
 * @param spentSeconds since the run began
 * @param freed published stays that it may move
 * @param publishedBy a name; null while nobody has
 */
public record KeptPlan(
        UUID id,
        State state,
        long startingNumber,
        int seconds,
        boolean withLight,
        String questionHash,
        String askedBy,
        OffsetDateTime askedAt,
        boolean cancelAsked,
        int spentSeconds,
        int requests,
        int placedAtMost,
        boolean optimal,
        SeasonPlan plan,
        Set<UUID> freed,
        @Nullable String publishedBy,
        @Nullable OffsetDateTime publishedAt,
        int version) {

    /** How far a plan has come. */
    public enum State {
        RUNNING("running", SAY.workedOn()),
        PROPOSED("proposed", "proposed"),
        LOST("lost", SAY.lostInMidRun()),
        FAILED("failed", "failed"),
        PUBLISHED("published", "published"),
        UNDONE("undone", SAY.publishedAndUndone());

        private final String word;
        private final String words;

        State(String word, String words) {
            this.word = word;
            this.words = words;
        }

        public String word() {
            return word;
        }

        public String words() {
            return words;
        }

        static State named(String word) {
            for (State state : values()) {
                if (state.word.equals(word)) {
                    return state;
                }
            }
            throw new IllegalArgumentException("no plan is '" + word + "'");
        }
    }

    public boolean isRunning() {
        return state == State.RUNNING;
    }

    /** Whether it may be changed by hand and published. */
    public boolean isOpen() {
        return state == State.PROPOSED || state == State.LOST;
    }

    /** How good it is, for people. */
    public String quality() {
        int placed = plan.placed().size();
        return optimal || placed >= placedAtMost
                ? SAY.placedAllThatCan(placed, requests)
                : SAY.placedOfAtMost(placed, requests, placedAtMost);
    }
}
