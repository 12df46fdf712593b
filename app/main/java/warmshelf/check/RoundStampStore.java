package warmshelf.check;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LABEL_PRINT;
import static warmshelf.db.generated.Tables.LABEL_RUN;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PROBLEM_ANSWER;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.ResultQuery;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.sowing.SowingStage;

/**
 * Tells by stamps which sowings under way have changed, so that the round reads only those anew. Each part of a sowing has a stamp
 * of its own, which is asked for when something was written where it stands.
 */
final class RoundStampStore {
    private static final Condition UNDER_WAY = SOWING.STAGE.in(SowingStage.UNDER_WAY);

    /** What is written here is found by a stamp; quarters change only with their stay or with the set-points of their mat. */
    static final List<Table<?>> STAMPED = List.of(
            SOWING, ENTRY, STAY, QUARTER_DAY, MAT_DAY, SPACE_REQUEST, LOT, PROBLEM_ANSWER, LABEL_PRINT, LABEL_RUN);

    private static final List<Part> PARTS = List.of(
            new Part(
                    List.of(SOWING, ENTRY),
                    sql -> sql.select(SOWING.ID, SOWING.VERSION).from(SOWING).where(UNDER_WAY)),
            new Part(
                    List.of(STAY),
                    sql -> sql.select(SOWING.ID, DSL.count(), DSL.sum(STAY.VERSION))
                            .from(SOWING)
                            .join(STAY)
                            .on(STAY.SOWING_ID.eq(SOWING.ID))
                            .where(UNDER_WAY)
                            .groupBy(SOWING.ID)),
            new Part(
                    List.of(MAT_DAY),
                    sql -> sql.select(SOWING.ID, DSL.sum(QUARTER_DAY.CELSIUS))
                            .from(SOWING)
                            .join(STAY)
                            .on(STAY.SOWING_ID.eq(SOWING.ID))
                            .join(QUARTER_DAY)
                            .on(QUARTER_DAY.STAY_ID.eq(STAY.ID))
                            .where(UNDER_WAY)
                            .groupBy(SOWING.ID)),
            new Part(
                    List.of(SPACE_REQUEST),
                    sql -> sql.select(SOWING.ID, SPACE_REQUEST.VERSION, SPACE_REQUEST.NEEDS_LIGHT)
                            .from(SOWING)
                            .join(SPACE_REQUEST)
                            .on(SPACE_REQUEST.SOWING_ID.eq(SOWING.ID))
                            .where(UNDER_WAY)),
            new Part(
                    List.of(LOT),
                    sql -> sql.select(SOWING.ID, LOT.VARIETY, LOT.TREATED)
                            .from(SOWING)
                            .join(LOT)
                            .on(LOT.ID.eq(SOWING.LOT_ID))
                            .where(UNDER_WAY)),
            new Part(
                    List.of(PROBLEM_ANSWER),
                    sql -> sql.select(SOWING.ID, DSL.count())
                            .from(PROBLEM_ANSWER)
                            .join(ENTRY)
                            .on(ENTRY.ID.eq(PROBLEM_ANSWER.ENTRY_ID))
                            .join(SOWING)
                            .on(SOWING.ID.eq(ENTRY.SOWING_ID))
                            .where(UNDER_WAY)
                            .groupBy(SOWING.ID)),
            new Part(
                    List.of(LABEL_PRINT, LABEL_RUN),
                    sql -> sql.select(SOWING.ID, DSL.count(), DSL.count(LABEL_RUN.UNDONE_AT))
                            .from(SOWING)
                            .join(LABEL_PRINT)
                            .on(LABEL_PRINT.SUBJECT_ID.eq(SOWING.ID))
                            .join(LABEL_RUN)
                            .on(LABEL_RUN.ID.eq(LABEL_PRINT.RUN_ID))
                            .where(UNDER_WAY)
                            .groupBy(SOWING.ID)));

    private final Database database;

    RoundStampStore(Database database) {
        this.database = database;
    }

    /** What tells of one part of each sowing whether it has changed: the sowing's id first, then its stamp. */
    private record Part(List<Table<?>> tables, Function<DSLContext, ResultQuery<? extends Record>> question) {}

    /** Of one part, when so much had been written. */
    private record Told(long writes, Map<UUID, List<Object>> stamps) {}

    /** The stamps of all sowings under way at a moment. */
    record Stamps(List<Told> parts) {
        Set<UUID> underWay() {
            return parts.get(0).stamps().keySet();
        }

        /** The sowings under way of which something is other than it was then. */
        Set<UUID> changedSince(Stamps then) {
            Set<UUID> changed = new HashSet<>();
            for (int part = 0; part < parts.size(); part++) {
                Map<UUID, List<Object>> now = parts.get(part).stamps();
                Map<UUID, List<Object>> before = then.parts.get(part).stamps();
                if (now != before) {
                    Stream.concat(now.keySet().stream(), before.keySet().stream())
                            .filter(id -> !Objects.equals(now.get(id), before.get(id)))
                            .forEach(changed::add);
                }
            }
            changed.retainAll(underWay());
            return changed;
        }
    }

    /**
     * Asks for the stamps, before anything they tell of is read: what is written in between is found changed the next time.
     *
     * @param last read before, of which those parts stay where this process has written nothing; null: none
     */
    Stamps read(@Nullable Stamps last) {
        List<Told> told = new ArrayList<>();
        for (int part = 0; part < PARTS.size(); part++) {
            Part asked = PARTS.get(part);
            long writes = database.writesTo(asked.tables());
            Told before = last == null ? null : last.parts().get(part);
            told.add(before != null && before.writes() == writes ? before : new Told(writes, stamps(asked)));
        }
        return new Stamps(told);
    }

    private Map<UUID, List<Object>> stamps(Part part) {
        Map<UUID, List<Object>> stamps = new HashMap<>();
        part.question().apply(database.sql()).forEach(row -> {
            List<Object> values = row.intoList();
            stamps.put((UUID) values.get(0), values.subList(1, values.size()));
        });
        return stamps;
    }
}
