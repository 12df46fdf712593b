package warmshelf.reminder;

import static warmshelf.db.generated.Tables.CALENDAR_ADDRESS;
import static warmshelf.db.generated.Tables.CALENDAR_EVENT;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.CalendarEventRecord;

/** Keeps what each member's calendars were last told. It is written only when something of it changed. */
final class ToldDayStore {
    private final DSLContext sql;

    ToldDayStore(Database database) {
        this.sql = database.sql();
    }

    /**
     * What a calendar tells now, noted for the next time.
     *
     * @param events everything that the part tells, each once
     */
    List<ToldDay> tell(UUID member, CalendarPart part, List<FeedDay> events, Instant now, LocalDate today) {
        Instant at = now.truncatedTo(ChronoUnit.MILLIS);
        Map<String, ToldDay> before = before(sql, member, part);
        List<ToldDay> told = ToldDay.all(before, events, at, today);
        return isAsBefore(before, told)
                ? told
                : sql.transactionResult(inside -> noted(inside.dsl(), member, part, events, at, today));
    }

    private static boolean isAsBefore(Map<String, ToldDay> before, List<ToldDay> told) {
        return new HashSet<>(before.values()).equals(new HashSet<>(told));
    }

    /** The addresses are held, so that of two programs that ask at once one goes by what the other was told. */
    private static List<ToldDay> noted(
            DSLContext tx, UUID member, CalendarPart part, List<FeedDay> events, Instant now, LocalDate today) {
        tx.select(CALENDAR_ADDRESS.PART)
                .from(CALENDAR_ADDRESS)
                .where(CALENDAR_ADDRESS.MEMBER_ID.eq(member))
                .orderBy(CALENDAR_ADDRESS.PART)
                .forUpdate()
                .fetch();
        Map<String, ToldDay> before = before(tx, member, part);
        List<ToldDay> told = ToldDay.all(before, events, now, today);
        Set<ToldDay> changed = new HashSet<>(told);
        changed.removeAll(before.values());
        Set<String> gone = new HashSet<>(before.keySet());
        told.forEach(each -> gone.remove(each.uid()));
        changed.forEach(each -> gone.add(each.uid()));
        tx.deleteFrom(CALENDAR_EVENT)
                .where(CALENDAR_EVENT.MEMBER_ID.eq(member), CALENDAR_EVENT.UID.in(gone))
                .execute();
        tx.batchInsert(changed.stream().map(each -> row(member, each)).toList()).execute();
        return told;
    }

    private static Map<String, ToldDay> before(DSLContext sql, UUID member, CalendarPart part) {
        Map<String, ToldDay> before = new HashMap<>();
        List<String> kinds = part.kinds().stream().map(FeedDay.Kind::word).toList();
        sql.selectFrom(CALENDAR_EVENT)
                .where(CALENDAR_EVENT.MEMBER_ID.eq(member), CALENDAR_EVENT.KIND.in(kinds))
                .orderBy(CALENDAR_EVENT.ON_DAY, CALENDAR_EVENT.UID)
                .forEach(row -> before.put(row.getUid(), told(row)));
        return before;
    }

    private static ToldDay told(CalendarEventRecord row) {
        return new ToldDay(
                row.getUid(),
                row.getKind().equals(FeedDay.Kind.DUTY.word()) ? FeedDay.Kind.DUTY : FeedDay.Kind.STEP,
                row.getOnDay(),
                row.getSummary(),
                row.getFingerprint(),
                row.getSequence(),
                row.getChangedAt().toInstant(),
                row.getCancelled());
    }

    private static CalendarEventRecord row(UUID member, ToldDay told) {
        CalendarEventRecord row = new CalendarEventRecord();
        row.setMemberId(member);
        row.setUid(told.uid());
        row.setKind(told.kind().word());
        row.setOnDay(told.day());
        row.setSummary(told.summary());
        row.setFingerprint(told.fingerprint());
        row.setSequence(told.sequence());
        row.setChangedAt(told.changedAt().atOffset(ZoneOffset.UTC));
        row.setCancelled(told.cancelled());
        return row;
    }
}
