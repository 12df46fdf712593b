package warmshelf.operation;

import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;
import static warmshelf.db.generated.Tables.SEASON_PLAN;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jooq.TableField;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;

/** How what goes on by itself fares: what is sent to people, whoever it is for, and what is worked out while nobody waits. */
final class WorkStore {
    /** Of the days in which a message is kept at all. */
    static final int DAYS = 7;

    private final DSLContext sql;

    WorkStore(Database database) {
        this.sql = database.sql();
    }

    MessageCount letters(Instant now, ZoneId zone) {
        return count(LETTER, LETTER.SENT_AT, LETTER.GIVEN_UP_AT, now, zone);
    }

    MessageCount notices(Instant now, ZoneId zone) {
        return count(PUSH_NOTICE, PUSH_NOTICE.SENT_AT, PUSH_NOTICE.GIVEN_UP_AT, now, zone);
    }

    /** Season plans that are being worked out, by whichever program. */
    int plans() {
        return sql.fetchCount(SEASON_PLAN, SEASON_PLAN.STATE.eq("running"));
    }

    /** Files of frost data that are being read, by whichever program. */
    int files() {
        return sql.fetchCount(FROST_IMPORT, FROST_IMPORT.STATE.eq("reading"));
    }

    private MessageCount count(
            Table<?> table,
            TableField<?, OffsetDateTime> sentAt,
            TableField<?, OffsetDateTime> givenUpAt,
            Instant now,
            ZoneId zone) {
        OffsetDateTime from = now.atOffset(ZoneOffset.UTC).minusDays(DAYS);
        @Nullable OffsetDateTime last = sql.select(DSL.max(sentAt)).from(table).fetchOne(0, OffsetDateTime.class);
        return new MessageCount(
                sql.fetchCount(table, sentAt.isNull(), givenUpAt.isNull()),
                sql.fetchCount(table, givenUpAt.ge(from)),
                last == null ? null : LocalDateTime.ofInstant(last.toInstant(), zone));
    }
}
