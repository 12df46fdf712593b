package warmshelf.exchange;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One file that somebody brings, from its coming until it is taken in or not; safe for use by several threads. */
final class IncomingJob {
    private final UUID id = UUID.randomUUID();
    private final IncomingOrder order;
    private final Instant startedAt;
    private IncomingState state = IncomingState.CHECKING;
    private boolean unwanted;
    private int permille;
    private int rows;
    private String words = "";
    private @Nullable IncomingFindings findings;
    private List<IncomingRows.MadeLink> links = List.of();

    IncomingJob(IncomingOrder order, Instant startedAt) {
        this.order = order;
        this.startedAt = startedAt;
    }

    /** How it stands at one moment. */
    record Standing(
            IncomingState state,
            int percent,
            int rows,
            String words,
            @Nullable IncomingFindings findings,
            List<IncomingRows.MadeLink> links) {}

    UUID id() {
        return id;
    }

    IncomingOrder order() {
        return order;
    }

    Instant startedAt() {
        return startedAt;
    }

    synchronized Standing standing() {
        return new Standing(state, permille / 10, rows, words, findings, links);
    }

    /** Whether it goes on from being looked at to being taken in; of two who press at once one gets it. */
    synchronized boolean beginTaking() {
        if (state != IncomingState.READY) {
            return false;
        }
        state = IncomingState.TAKING;
        permille = 0;
        rows = 0;
        return true;
    }

    /** Wants no more of it; false when it is over. What is being read ends at the next row. */
    synchronized boolean giveUp() {
        if (state.isOver()) {
            return false;
        }
        if (state == IncomingState.READY) {
            state = IncomingState.CANCELLED;
        }
        unwanted = true;
        return true;
    }

    /** Notes how far the reading is. */
    synchronized void at(int nowPermille, int nowRows) {
        if (unwanted) {
            throw new IncomingCancelled();
        }
        permille = Math.max(permille, nowPermille);
        rows = nowRows;
    }

    synchronized void ready(IncomingFindings found) {
        findings = found;
        state = unwanted ? IncomingState.CANCELLED : IncomingState.READY;
    }

    synchronized void taken(IncomingFindings found) {
        findings = found;
        links = List.copyOf(found.links());
        state = IncomingState.TAKEN;
    }

    synchronized void end(IncomingState how, String why) {
        state = how;
        words = why;
    }
}
