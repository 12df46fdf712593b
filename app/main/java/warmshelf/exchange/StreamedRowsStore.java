package warmshelf.exchange;

import java.io.IOException;
import java.util.function.Function;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.ResultQuery;
import org.jooq.exception.DataAccessException;

/** Hands on the rows of a question as they are read, so that a long answer needs no more memory than a short one. */
final class StreamedRowsStore {
    private static final int FETCHED_AT_ONCE = 500;

    private StreamedRowsStore() {}

    /** Takes a row. */
    interface Reader {
        void take(Record row) throws IOException;
    }

    /** Asks within a transaction of its own, which PostgreSQL needs to send rows bit by bit. */
    static void each(DSLContext sql, Function<DSLContext, ResultQuery<? extends Record>> question, Reader reader)
            throws IOException {
        try {
            sql.transaction(within -> {
                try (Cursor<? extends Record> rows =
                        question.apply(within.dsl()).fetchSize(FETCHED_AT_ONCE).fetchLazy()) {
                    while (rows.hasNext()) {
                        reader.take(rows.fetchNext());
                    }
                }
            });
        } catch (DataAccessException broken) {
            if (broken.getCause() instanceof IOException gone) {
                throw gone;
            }
            throw broken;
        }
    }
}
