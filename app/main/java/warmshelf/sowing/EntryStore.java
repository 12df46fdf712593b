package warmshelf.sowing;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps what was seen and done. Rows are only ever added. */
public final class EntryStore {
    private static final int FETCHED_AT_ONCE = 500;

    private final Audit audit;

    public EntryStore(Audit audit) {
        this.audit = audit;
    }

    /** The entries of one sowing, the oldest first. */
    public List<Entry> ofSowing(DSLContext sql, UUID sowing) {
        return entries(sql, ENTRY, ENTRY.SOWING_ID.eq(sowing));
    }

    /** The entries of some sowings, the oldest first. */
    public Map<UUID, List<Entry>> ofSowings(DSLContext sql, Collection<UUID> sowings) {
        return entries(sql, Database.listed(ENTRY, ENTRY.SOWING_ID, sowings), DSL.noCondition()).stream()
                .collect(Collectors.groupingBy(Entry::sowingId));
    }

    public Optional<Entry> find(DSLContext sql, UUID id) {
        return entries(sql, ENTRY, ENTRY.ID.eq(id).and(ENTRY.SOWING_ID.isNotNull())).stream()
                .findFirst();
    }

    /** The entries of a sowing that were kept after a moment, so that nobody could know of them then. */
    public Set<UUID> keptAfter(DSLContext sql, UUID sowing, OffsetDateTime moment) {
        return sql.select(ENTRY.ID)
                .from(ENTRY)
                .where(ENTRY.SOWING_ID.eq(sowing), ENTRY.MADE_AT.gt(moment))
                .fetchSet(ENTRY.ID);
    }

    /** Adds an entry of whoever looked within the caller's transaction. */
    public void add(DSLContext tx, Entry entry) {
        add(tx, entry, null, entry.by());
    }

    /** Adds, within the caller's transaction, what one person wrote on paper and another one types in. */
    public void addTyped(DSLContext tx, Entry entry, UUID typist) {
        add(tx, entry, typist, typist);
    }

    private void add(DSLContext tx, Entry entry, @Nullable UUID typist, UUID enteredBy) {
        tx.insertInto(ENTRY)
                .set(ENTRY.ID, entry.id())
                .set(ENTRY.SOWING_ID, entry.sowingId())
                .set(ENTRY.STEP, entry.step().word())
                .set(ENTRY.SEEN_ON, entry.seenOn())
                .set(ENTRY.SEEN_AT, entry.seenAt())
                .set(ENTRY.SPROUTED, entry.sprouted())
                .set(ENTRY.MOVED, entry.moved())
                .set(ENTRY.LOST, entry.lost())
                .set(ENTRY.FINISHED, entry.finished())
                .set(
                        ENTRY.PROBLEM,
                        Optional.ofNullable(entry.problem()).map(Problem::word).orElse(null))
                .set(ENTRY.NOTE, entry.note())
                .set(ENTRY.SUPERSEDES, entry.supersedes())
                .set(ENTRY.MADE_BY, entry.by())
                .set(ENTRY.TYPED_BY, typist)
                .set(ENTRY.MADE_AT, audit.now())
                .execute();
        audit.write(tx, enteredBy, "enter " + entry.step().word(), "sowing", entry.sowingId(), "entry " + entry.id());
    }

    /** Takes entries one by one. */
    public interface Reader {
        void take(Entry entry) throws IOException;
    }

    /**
     * Hands on each entry that still counts of the sowings that a condition names, in the order in which they were seen, without
     * keeping them: PostgreSQL sends some hundred at a time, and only within a transaction.
     *
     * @throws IOException from the reader
     */
    public void forEachOf(DSLContext sql, Condition sowings, Reader reader) throws IOException {
        warmshelf.db.generated.tables.Entry later = ENTRY.as("later");
        try {
            sql.transaction(within -> {
                try (Cursor<? extends Record> rows = within.dsl()
                        .select(ENTRY.asterisk(), MEMBER.CALLED)
                        .from(ENTRY)
                        .join(SOWING)
                        .on(SOWING.ID.eq(ENTRY.SOWING_ID))
                        .join(MEMBER)
                        .on(MEMBER.ID.eq(ENTRY.MADE_BY))
                        .where(sowings, ENTRY.STEP.ne(EntryStep.UNDONE.word()))
                        .andNotExists(DSL.selectOne().from(later).where(later.SUPERSEDES.eq(ENTRY.ID)))
                        .orderBy(ENTRY.SEEN_AT, ENTRY.KEPT_ORDER)
                        .fetchSize(FETCHED_AT_ONCE)
                        .fetchLazy()) {
                    while (rows.hasNext()) {
                        reader.take(entry(rows.fetchNext()));
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

    /** Who typed in what others had seen at a sowing, by entry. */
    Map<UUID, Typist> typists(DSLContext sql, UUID sowing) {
        return sql.select(ENTRY.ID, MEMBER.CALLED, MEMBER.ROLE)
                .from(ENTRY)
                .join(MEMBER)
                .on(MEMBER.ID.eq(ENTRY.TYPED_BY))
                .where(ENTRY.SOWING_ID.eq(sowing))
                .fetchMap(
                        ENTRY.ID,
                        row -> new Typist(
                                row.get(MEMBER.CALLED), row.get(MEMBER.ROLE).equals("tablet")));
    }

    private static List<Entry> entries(DSLContext sql, Table<?> among, Condition which) {
        return sql.select(ENTRY.asterisk(), MEMBER.CALLED)
                .from(among)
                .join(MEMBER)
                .on(MEMBER.ID.eq(ENTRY.MADE_BY))
                .where(which)
                .orderBy(ENTRY.SEEN_AT, ENTRY.KEPT_ORDER)
                .fetch(EntryStore::entry);
    }

    private static Entry entry(Record found) {
        return new Entry(
                found.get(ENTRY.ID),
                found.get(ENTRY.SOWING_ID),
                EntryStep.named(found.get(ENTRY.STEP)),
                found.get(ENTRY.SEEN_ON),
                found.get(ENTRY.SEEN_AT),
                found.get(ENTRY.SPROUTED),
                found.get(ENTRY.MOVED),
                found.get(ENTRY.LOST),
                found.get(ENTRY.FINISHED),
                Optional.ofNullable(found.get(ENTRY.PROBLEM))
                        .map(Problem::named)
                        .orElse(null),
                found.get(ENTRY.NOTE),
                found.get(ENTRY.SUPERSEDES),
                found.get(ENTRY.MADE_BY),
                found.get(MEMBER.CALLED));
    }
}
