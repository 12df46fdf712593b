package warmshelf.sowing;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING_MESSAGE;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.Member;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;

/** Keeps what people write to a grower or a coordinator about a sowing. */
final class MessageStore {
    private static final Member WRITER = MEMBER.as("writer");
    private static final Member READER = MEMBER.as("reader");

    private final DSLContext sql;
    private final Audit audit;
    private final NewsBookStore news;

    MessageStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
        this.news = new NewsBookStore(audit);
    }

    /** Somebody who can be written to. */
    public record Reader(UUID id, String name, boolean grower) {}

    /** What was written. */
    public record Message(String by, String to, String words, OffsetDateTime at) {
        public LocalDate on(ZoneId zone) {
            return at.atZoneSameInstant(zone).toLocalDate();
        }
    }

    /** To whom a member may write about a sowing: its grower first, then the coordinators. */
    List<Reader> readers(Sowing sowing, UUID writer) {
        UUID grower = sowing.grower().memberId();
        return sql
                .select(MEMBER.ID, MEMBER.CALLED)
                .from(MEMBER)
                .where(
                        MEMBER.LEFT_AT.isNull(),
                        MEMBER.ID.ne(writer),
                        MEMBER.ID.eq(grower).or(MEMBER.ROLE.eq("coordinator")))
                .orderBy(MEMBER.CALLED, MEMBER.ID)
                .fetch(row ->
                        new Reader(row.value1(), row.value2(), row.value1().equals(grower)))
                .stream()
                .sorted((one, other) -> Boolean.compare(other.grower(), one.grower()))
                .toList();
    }

    /** Keeps a message and tells its reader. */
    void write(UUID sowing, UUID to, String words, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            tx.insertInto(SOWING_MESSAGE)
                    .set(SOWING_MESSAGE.ID, UUID.randomUUID())
                    .set(SOWING_MESSAGE.SOWING_ID, sowing)
                    .set(SOWING_MESSAGE.WRITTEN_BY, by)
                    .set(SOWING_MESSAGE.WRITTEN_TO, to)
                    .set(SOWING_MESSAGE.WORDS, words)
                    .set(SOWING_MESSAGE.WRITTEN_AT, audit.now())
                    .execute();
            news.tell(tx, to, NewsEvent.ofSowing(NewsKind.MESSAGE, sowing, by));
            audit.write(tx, by, "write message", "sowing", sowing, "");
        });
    }

    /** What was written about a sowing, the newest first. */
    List<Message> ofSowing(UUID sowing) {
        return sql.select(WRITER.CALLED, READER.CALLED, SOWING_MESSAGE.WORDS, SOWING_MESSAGE.WRITTEN_AT)
                .from(SOWING_MESSAGE)
                .join(WRITER)
                .on(WRITER.ID.eq(SOWING_MESSAGE.WRITTEN_BY))
                .join(READER)
                .on(READER.ID.eq(SOWING_MESSAGE.WRITTEN_TO))
                .where(SOWING_MESSAGE.SOWING_ID.eq(sowing), SOWING_MESSAGE.WORDS.ne(""))
                .orderBy(SOWING_MESSAGE.WRITTEN_AT.desc(), SOWING_MESSAGE.ID)
                .fetch(row -> new Message(row.value1(), row.value2(), row.value3(), row.value4()));
    }
}
