package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * What a sowing asks of the mats, and what became of it.
 *
 * @param days on the mat at the temperature that suits best
 * @param band set-points that suit the crop
 * @param underLight whether it is to go under the group's lights when it comes off the heat; false: it goes home
 * @param needsLight whether its seed needs light from sowing on, and nobody has said that it gets it otherwise
 * @param reason why it was refused, or empty
 */
public record SpaceRequest(
        UUID sowingId,
        State state,
        LocalDate earliest,
        LocalDate ideal,
        LocalDate latest,
        int days,
        int quarters,
        Band band,
        boolean underLight,
        boolean needsLight,
        String reason,
        int version) {

    /** A request for seed that comes up in the dark as well. */
    public SpaceRequest(
            UUID sowingId,
            State state,
            LocalDate earliest,
            LocalDate ideal,
            LocalDate latest,
            int days,
            int quarters,
            Band band,
            boolean underLight,
            String reason,
            int version) {
        this(sowingId, state, earliest, ideal, latest, days, quarters, band, underLight, false, reason, version);
    }

    /** Where a request stands. */
    public enum State {
        WAITING("waiting"),
        PLACED("placed"),
        REFUSED("refused"),
        WITHDRAWN("withdrawn");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** The state of that word. */
        public static State named(String word) {
            for (State state : values()) {
                if (state.word.equals(word)) {
                    return state;
                }
            }
            throw new IllegalArgumentException("no request is '" + word + "'");
        }
    }

    public boolean isWaiting() {
        return state == State.WAITING;
    }

    /** A day where it may begin then, else its ideal day; never one that has passed. */
    public LocalDate startNear(LocalDate day, LocalDate today) {
        LocalDate start = day.isBefore(earliest) || day.isAfter(latest) ? ideal : day;
        return start.isBefore(today) ? today : start;
    }
}
