package warmshelf.shelf;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.BOARD_LOOK;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.STAY_MOVE;
import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Reach;
import warmshelf.words.DayWords;

/** Reads what others changed on the boards since somebody last looked, in a few questions however many trays there are. */
public final class BoardChangeStore {
    private static final int MOST_LINES = 8;

    private final Database database;
    private final DSLContext sql;
    private final Audit audit;

    public BoardChangeStore(Database database, Audit audit) {
        this.database = database;
        this.sql = database.sql();
        this.audit = audit;
    }

    /**
     * Who looks.
     *
     * @param reach as a coordinator; a member is told of their own trays alone
     */
    public record Reader(UUID member, Reach reach) {}

    /** What is new to somebody who looks now; what the visit before showed is not. */
    BoardChanges look(Reader reader, LocalDate today) {
        OffsetDateTime now = audit.now();
        Optional<BoardLook> last = sql.selectFrom(BOARD_LOOK)
                .where(BOARD_LOOK.MEMBER_ID.eq(reader.member()))
                .fetchOptional(row -> new BoardLook(row.getSeenUntil(), row.getLookedAt()));
        BoardLook look = last.map(before -> before.at(now)).orElseGet(() -> BoardLook.first(now));
        if (!last.equals(Optional.of(look)) && haveRoom()) {
            keep(reader.member(), look);
        }
        return last.isEmpty() ? BoardChanges.NONE : since(look.seenUntil(), reader, today);
    }

    /** A full disk keeps nobody from reading. */
    private boolean haveRoom() {
        return database.room().map(room -> !room.isFull()).orElse(true);
    }

    private void keep(UUID member, BoardLook look) {
        int changed = sql.update(BOARD_LOOK)
                .set(BOARD_LOOK.SEEN_UNTIL, look.seenUntil())
                .set(BOARD_LOOK.LOOKED_AT, look.lookedAt())
                .where(BOARD_LOOK.MEMBER_ID.eq(member))
                .execute();
        if (changed == 0) {
            sql.insertInto(BOARD_LOOK)
                    .set(BOARD_LOOK.MEMBER_ID, member)
                    .set(BOARD_LOOK.SEEN_UNTIL, look.seenUntil())
                    .set(BOARD_LOOK.LOOKED_AT, look.lookedAt())
                    .onConflictDoNothing()
                    .execute();
        }
    }

    private BoardChanges since(OffsetDateTime since, Reader reader, LocalDate today) {
        Map<UUID, StayMark.Change> stays = new HashMap<>();
        changed(reader, today, STAY.MADE_AT.gt(since).and(STAY.MADE_BY.ne(reader.member())))
                .forEach(row -> stays.put(row.get(STAY.ID), StayMark.Change.PLACED));
        changed(
                        reader,
                        today,
                        STAY.ID.in(DSL.select(STAY_MOVE.NEW_STAY_ID)
                                .from(STAY_MOVE)
                                .where(STAY_MOVE.MOVED_AT.gt(since), STAY_MOVE.MOVED_BY.ne(reader.member()))))
                .forEach(row -> stays.put(row.get(STAY.ID), StayMark.Change.MOVED));
        List<BoardChanges.Line> others = new ArrayList<>(outages(since, reader, today));
        others.addAll(freed(since, reader));
        return new BoardChanges(stays, others.stream().limit(MOST_LINES).toList());
    }

    private SelectConditionStep<? extends Record> changed(Reader reader, LocalDate today, Condition how) {
        return OnSiteStore.ofPlaces(sql.select(STAY.ID)
                        .from(STAY.join(PLACE)
                                .on(PLACE.ID.eq(STAY.PLACE_ID))
                                .join(SOWING)
                                .on(SOWING.ID.eq(STAY.SOWING_ID))))
                .where(STAY.TO_DAY.gt(today), STAY.FROM_DAY.lt(STAY.TO_DAY), how, concerns(reader));
    }

    private static Condition concerns(Reader reader) {
        return SOWING.MEMBER_ID.eq(reader.member()).or(theirs(reader));
    }

    private static Condition theirs(Reader reader) {
        return reader.reach().wholeGroup()
                ? DSL.trueCondition()
                : RACK.SITE_ID.in(reader.reach().sites());
    }

    private List<BoardChanges.Line> outages(OffsetDateTime since, Reader reader, LocalDate today) {
        Condition lies = DSL.exists(DSL.selectOne()
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .where(
                        PLACE.MAT_ID.eq(MAT.ID),
                        SOWING.MEMBER_ID.eq(reader.member()),
                        STAY.TO_DAY.gt(today),
                        STAY.FROM_DAY.lt(MAT_OUT.TO_DAY)));
        return OnSiteStore.ofMats(sql.select(MAT_OUT.ID, MAT.NAME, MAT_OUT.FROM_DAY, MAT_OUT.TO_DAY)
                        .from(MAT_OUT)
                        .join(MAT)
                        .on(MAT.ID.eq(MAT_OUT.MAT_ID)))
                .where(
                        MAT_OUT.MADE_AT.gt(since),
                        MAT_OUT.MADE_BY.ne(reader.member()),
                        MAT_OUT.TO_DAY.gt(today),
                        theirs(reader).or(lies))
                .orderBy(MAT_OUT.FROM_DAY, MAT.NAME)
                .fetch(row -> new BoardChanges.Line(
                        SAY.outSince(row.value2(), DayWords.span(row.value3(), row.value4())),
                        "/plans/out-of-service/" + row.value1()));
    }

    /** Places that a coordinator freed; that stands in the record of changes, which is asked by its time. */
    private List<BoardChanges.Line> freed(OffsetDateTime since, Reader reader) {
        return OnSiteStore.ofPlaces(sql.select(STAY.ID, MAT.NAME, PLACE.NUMBER, RACK.NAME, SHELF.FROM_TOP)
                        .from(AUDIT_LINE
                                .join(STAY)
                                .on(STAY.ID.cast(String.class).eq(AUDIT_LINE.SUBJECT_ID))
                                .join(PLACE)
                                .on(PLACE.ID.eq(STAY.PLACE_ID))
                                .join(SOWING)
                                .on(SOWING.ID.eq(STAY.SOWING_ID))))
                .where(
                        AUDIT_LINE.AT.gt(since),
                        AUDIT_LINE.ACTION.eq("free place"),
                        AUDIT_LINE.MEMBER_ID.ne(reader.member()),
                        concerns(reader))
                .orderBy(AUDIT_LINE.AT.desc())
                .fetch(row -> new BoardChanges.Line(
                        row.value2() == null
                                ? SAY.freedUnderLight(row.value4(), row.value5(), row.value3())
                                : SAY.freedOnMat(row.value2(), row.value3()),
                        "/stays/" + row.value1()));
    }
}
