package warmshelf.exchange;

import java.io.IOException;
import java.util.Objects;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.frost.garden.NightStore;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.seed.LotStore;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.SowingStore;
import warmshelf.table.TableFile;
import warmshelf.table.TableRow;

/** Reads a file that somebody brings, to look at it or to take it in: all its rows in one transaction, or none. */
final class IncomingStore {
    private final Database database;
    private final IncomingLogStore log;
    private final Parts parts;

    /** The stores that keep the rows. */
    record Parts(
            LotStore lots,
            SowingStore sowings,
            EntryStore entries,
            CropCatalogue crops,
            MemberStore members,
            LinkStore links,
            NightStore nights) {}

    IncomingStore(Database database, IncomingLogStore log, Parts parts) {
        this.database = database;
        this.log = log;
        this.parts = parts;
    }

    /**
     * What would come of it; nothing is kept.
     *
     * @throws warmshelf.BadInput when it is no such table
     */
    IncomingFindings check(IncomingOrder order, IncomingFindings.Watch watch) {
        return database.sql().transactionResult(work -> read(order, rows(order, work.dsl(), false), watch));
    }

    /** Takes it in. Overtaken, with nothing kept, where a row that was good when it was looked at is not any more. */
    Decision<IncomingFindings> take(UUID id, IncomingOrder order, IncomingFindings.Watch watch) {
        try {
            return Decision.of(() -> database.sql().transactionResult(work -> {
                IncomingFindings found = read(order, rows(order, work.dsl(), true), watch);
                if (found.wrongRows() > 0) {
                    throw Declined.overtaken(new IncomingRefusal.ChangedMeanwhile());
                }
                log.add(work.dsl(), id, order, found.goodRows(), found.leftOutRows());
                return found;
            }));
        } catch (IntegrityConstraintViolationException sameRowMeanwhile) {
            return new Decision.Overtaken<>(new IncomingRefusal.ChangedMeanwhile());
        }
    }

    private IncomingRows rows(IncomingOrder order, DSLContext within, boolean keep) {
        return switch (order.kind()) {
            case LOTS -> new IncomingLotStore(within, parts.lots(), parts.crops(), order, keep);
            case SOWINGS ->
                new IncomingSowingStore(
                        within, parts.lots(), parts.sowings(), parts.entries(), parts.crops(), order, keep);
            case MEMBERS -> new IncomingMemberStore(within, parts.members(), parts.links(), order.by(), keep);
            case NIGHTS ->
                new IncomingNightStore(
                        within, parts.nights(), order, Objects.requireNonNull(order.thermometer()), keep);
        };
    }

    private static IncomingFindings read(IncomingOrder order, IncomingRows rows, IncomingFindings.Watch watch)
            throws IOException {
        TableFile table = TableFile.open(order.file(), order.kind().columns());
        IncomingFindings found = new IncomingFindings(order.kind(), rows, watch);
        found.begin(table);
        if (rows.learns()) {
            table.each(new Learning(rows, watch));
        }
        table.each(found);
        found.end(table);
        return found;
    }

    private record Learning(IncomingRows rows, IncomingFindings.Watch watch) implements TableFile.Visit {
        @Override
        public void row(TableRow row, int permille) {
            watch.at(0, 0);
            rows.learn(row);
        }

        @Override
        public void tooManyCells(long number, int cells, int columns) {
            // the second reading tells it
        }
    }
}
