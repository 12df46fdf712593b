package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.STAY_MOVE;

import java.util.List;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.DatePart;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.impl.DSL;
import warmshelf.db.Database;
import warmshelf.db.KeptUntilWritten;

/** Tells one state of the boards from another, so that a page learns that somebody changed what it shows. */
public final class BoardStateStore {
    private final KeptUntilWritten<String, String> kept;

    public BoardStateStore(Database database) {
        kept = new KeptUntilWritten<>(database, all -> read(database.sql()));
    }

    /** A word that is another one after each change of what lies, waits, is set or stands. */
    public String state() {
        return kept.get("all");
    }

    private static String read(DSLContext sql) {
        return List.of(
                        sum(sql, STAY, STAY.VERSION),
                        sum(sql, STAY_MOVE, DSL.one()),
                        sum(sql, SOWING, SOWING.VERSION),
                        sum(sql, SPACE_REQUEST, SPACE_REQUEST.VERSION),
                        sum(sql, MAT_OUT, DSL.extract(MAT_OUT.TO_DAY, DatePart.DAY)),
                        sum(sql, MAT_DAY, MAT_DAY.CELSIUS),
                        sum(sql, RACK, RACK.VERSION),
                        sum(sql, SHELF, SHELF.VERSION),
                        sum(sql, MAT, MAT.VERSION))
                .stream()
                .collect(Collectors.joining("-"));
    }

    /** How many rows there are and what a figure of theirs comes to: each change of one moves one of both. */
    private static String sum(DSLContext sql, Table<?> table, Field<? extends Number> figure) {
        return sql.select(DSL.count(), DSL.coalesce(DSL.sum(figure), DSL.zero()))
                .from(table)
                .fetchSingle(row ->
                        row.value1() + "." + row.value2().stripTrailingZeros().toPlainString());
    }
}
