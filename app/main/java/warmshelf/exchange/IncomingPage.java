package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What the page of one file shows.
 *
 * @param words how it stands, in a sentence
 * @param findings null: it was not read to its end yet
 * @param links made by taking it in, with the whole address of each
 * @param before the very same file, taken in before
 */
public record IncomingPage(
        UUID id,
        IncomingKind kind,
        String fileName,
        IncomingState state,
        int percent,
        String words,
        @Nullable IncomingFindings findings,
        List<IncomingRows.MadeLink> links,
        @Nullable TakenTable before,
        String about) {

    static IncomingPage of(IncomingJob job, @Nullable TakenTable before, UnaryOperator<String> wholeAddress) {
        IncomingJob.Standing now = job.standing();
        IncomingOrder order = job.order();
        return new IncomingPage(
                job.id(),
                order.kind(),
                order.fileName(),
                now.state(),
                now.percent(),
                words(now),
                now.findings(),
                now.links().stream()
                        .map(link -> new IncomingRows.MadeLink(link.name(), wholeAddress.apply(link.path())))
                        .toList(),
                now.state() == IncomingState.TAKEN ? null : before,
                about(order));
    }

    private static String about(IncomingOrder order) {
        return switch (order.kind()) {
            case LOTS ->
                switch (order.whose()) {
                    case MINE -> SAY.lotsOfMine();
                    case GROUP -> SAY.lotsOfGroup();
                    case COLUMN -> SAY.lotsByColumn();
                };
            case SOWINGS -> order.whose() == IncomingOrder.Whose.COLUMN ? SAY.sowingsByColumn() : SAY.sowingsOfMine();
            case MEMBERS -> SAY.invitations();
            case NIGHTS ->
                SAY.nightsOf(
                        order.thermometer() == null ? "" : order.thermometer().name());
        };
    }

    private static String words(IncomingJob.Standing now) {
        return switch (now.state()) {
            case CHECKING -> now.rows() == 0 ? SAY.waits() : SAY.checking(now.rows());
            case TAKING -> SAY.taking(now.rows());
            case READY -> SAY.ready();
            case TAKEN -> SAY.taken();
            case CANCELLED -> SAY.cancelled();
            case REFUSED, FAILED -> now.words();
        };
    }

    /** Whether it can be taken in as it is. */
    public boolean isFit() {
        return state == IncomingState.READY && findings != null && findings.wrongRows() == 0 && findings.goodRows() > 0;
    }

    /** Whether it has doubts that somebody has to say yes to first. */
    public boolean isDoubtful() {
        return isFit() && findings != null && !findings.doubts().isEmpty();
    }
}
