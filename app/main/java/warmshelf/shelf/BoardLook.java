package warmshelf.shelf;

import java.time.Duration;
import java.time.OffsetDateTime;

/**
 * How far somebody has seen what changed on the boards.
 *
 * @param seenUntil what changed after this is marked for them
 * @param lookedAt when the visit began in which they look
 */
record BoardLook(OffsetDateTime seenUntil, OffsetDateTime lookedAt) {
    /** So long whoever goes from board to board is on one visit, and finds the same marked. */
    static final Duration VISIT = Duration.ofMinutes(10);

    /** The first look: nothing is marked, since all of it would be. */
    static BoardLook first(OffsetDateTime now) {
        return new BoardLook(now, now);
    }

    /** A look at a moment; what the visit before has shown is seen. */
    BoardLook at(OffsetDateTime now) {
        return lookedAt.plus(VISIT).isAfter(now) ? this : new BoardLook(lookedAt, now);
    }
}
