package warmshelf.plan;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLAN_NOTE;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.words.Units;

/** What members are told when a plan is published, until they put it away. Everyone's Today asks, so it is kept until a write. */
final class PlanNoteStore {
    private static final long KEPT_NANOS = Duration.ofSeconds(2).toNanos();
    private static final int LONGEST_WORDS = 1000;

    private final Database database;
    private final Audit audit;
    private volatile @Nullable Kept kept;

    PlanNoteStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** A sentence or two about one sowing. */
    public record Note(UUID id, UUID sowingId, boolean placed, String words) {}

    private record Open(UUID id, UUID memberId, UUID sowingId, boolean placed, PlanNews news) {
        Note note(Units units) {
            return new Note(id, sowingId, placed, news.words(units));
        }
    }

    private record Kept(long writes, long sinceNanos, Map<UUID, List<Open>> notes) {}

    /** What a member has not put away, the newest first, in their units. */
    List<Note> ofMember(UUID member, Units units) {
        Kept last = kept;
        long writes = database.writesBesideLooks();
        boolean fresh = last != null
                && last.writes() == writes
                && (!database.isShared() || System.nanoTime() - last.sinceNanos() < KEPT_NANOS);
        if (last == null || !fresh) {
            last = new Kept(writes, System.nanoTime(), open());
            kept = last;
        }
        return last.notes().getOrDefault(member, List.of()).stream()
                .map(each -> each.note(units))
                .toList();
    }

    private Map<UUID, List<Open>> open() {
        return database
                .sql()
                .select(
                        PLAN_NOTE.ID,
                        PLAN_NOTE.MEMBER_ID,
                        PLAN_NOTE.SOWING_ID,
                        PLAN_NOTE.PLACED,
                        PLAN_NOTE.WORDS,
                        PLAN_NOTE.REFUSED)
                .from(PLAN_NOTE)
                .where(PLAN_NOTE.DISMISSED_AT.isNull())
                .orderBy(PLAN_NOTE.MADE_AT.desc(), PLAN_NOTE.PLACED, PLAN_NOTE.WORDS)
                .fetch(row -> new Open(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        row.value4(),
                        PlanNews.kept(row.value5(), row.value6())))
                .stream()
                .collect(Collectors.groupingBy(Open::memberId));
    }

    /** Everything members were told by one plan, also what they put away; by their names, the oldest first. */
    List<Told> ofPlan(UUID plan, Units units) {
        return database.sql()
                .select(MEMBER.CALLED, PLAN_NOTE.WORDS, PLAN_NOTE.REFUSED)
                .from(PLAN_NOTE)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PLAN_NOTE.MEMBER_ID))
                .where(PLAN_NOTE.PLAN_ID.eq(plan))
                .orderBy(MEMBER.CALLED, MEMBER.ID, PLAN_NOTE.MADE_AT, PLAN_NOTE.PLACED.desc(), PLAN_NOTE.WORDS)
                .fetch(row -> new Told(
                        row.value1(), PlanNews.kept(row.value2(), row.value3()).words(units)));
    }

    /** What a member was told. */
    public record Told(String member, String words) {}

    /** Tells a member of their sowing, in the place of what they were told before. */
    void tell(DSLContext tx, UUID plan, UUID member, UUID sowing, boolean placed, PlanNews news) {
        tx.update(PLAN_NOTE)
                .set(PLAN_NOTE.DISMISSED_AT, audit.now())
                .where(PLAN_NOTE.SOWING_ID.eq(sowing), PLAN_NOTE.DISMISSED_AT.isNull())
                .execute();
        tx.insertInto(PLAN_NOTE)
                .set(PLAN_NOTE.ID, UUID.randomUUID())
                .set(PLAN_NOTE.PLAN_ID, plan)
                .set(PLAN_NOTE.MEMBER_ID, member)
                .set(PLAN_NOTE.SOWING_ID, sowing)
                .set(PLAN_NOTE.PLACED, placed)
                .set(PLAN_NOTE.WORDS, news.begins(LONGEST_WORDS))
                .set(PLAN_NOTE.REFUSED, news.refusedText())
                .set(PLAN_NOTE.MADE_AT, audit.now())
                .execute();
    }

    /** Puts a note away; someone else's stays. */
    void dismiss(UUID note, UUID member) {
        database.sql().transaction(inside -> {
            int gone = inside.dsl()
                    .update(PLAN_NOTE)
                    .set(PLAN_NOTE.DISMISSED_AT, audit.now())
                    .where(PLAN_NOTE.ID.eq(note), PLAN_NOTE.MEMBER_ID.eq(member), PLAN_NOTE.DISMISSED_AT.isNull())
                    .execute();
            if (gone == 1) {
                audit.write(inside.dsl(), member, "put note away", "note", note, "");
            }
        });
    }
}
