package warmshelf.duty;

import static warmshelf.db.generated.Tables.DUTY_SWAP;
import static warmshelf.db.generated.Tables.DUTY_SWAP_REFUSAL;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.Member;
import warmshelf.db.generated.tables.Site;

/** Reads swaps with the names in them. */
public final class SwapReadStore {
    private static final Member ASKER = MEMBER.as("asker");
    private static final Member ASKED = MEMBER.as("asked");
    private static final Member TAKER = MEMBER.as("taker");
    private static final Site RETURN_SITE = SITE.as("return_site");

    private final DSLContext sql;

    public SwapReadStore(Database database) {
        this.sql = database.sql();
    }

    /** Swaps of days from one day on, the soonest first. */
    List<Swap> since(LocalDate from) {
        return read(sql, DUTY_SWAP.ON_DAY.ge(from));
    }

    static Optional<Swap> find(DSLContext sql, UUID id) {
        return read(sql, DUTY_SWAP.ID.eq(id)).stream().findFirst();
    }

    private static List<Swap> read(DSLContext sql, Condition which) {
        Map<UUID, List<UUID>> refusals = sql.select(DUTY_SWAP_REFUSAL.SWAP_ID, DUTY_SWAP_REFUSAL.MEMBER_ID)
                .from(DUTY_SWAP_REFUSAL)
                .join(DUTY_SWAP)
                .on(DUTY_SWAP.ID.eq(DUTY_SWAP_REFUSAL.SWAP_ID))
                .where(which)
                .fetchGroups(DUTY_SWAP_REFUSAL.SWAP_ID, DUTY_SWAP_REFUSAL.MEMBER_ID);
        return sql.select(DUTY_SWAP.fields())
                .select(SITE.NAME, RETURN_SITE.NAME, ASKER.CALLED, ASKED.CALLED, TAKER.CALLED)
                .from(DUTY_SWAP)
                .join(SITE)
                .on(SITE.ID.eq(DUTY_SWAP.SITE_ID))
                .join(ASKER)
                .on(ASKER.ID.eq(DUTY_SWAP.ASKED_BY))
                .leftJoin(ASKED)
                .on(ASKED.ID.eq(DUTY_SWAP.ASKED_OF))
                .leftJoin(TAKER)
                .on(TAKER.ID.eq(DUTY_SWAP.TAKEN_BY))
                .leftJoin(RETURN_SITE)
                .on(RETURN_SITE.ID.eq(DUTY_SWAP.RETURN_SITE_ID))
                .where(which)
                .orderBy(DUTY_SWAP.ON_DAY, DUTY_SWAP.ASKED_AT, DUTY_SWAP.ID)
                .fetch(row -> swap(row, Set.copyOf(refusals.getOrDefault(row.get(DUTY_SWAP.ID), List.of()))));
    }

    private static Swap swap(Record row, Set<UUID> refusedBy) {
        LocalDate returnDay = row.get(DUTY_SWAP.RETURN_DAY);
        return new Swap(
                row.get(DUTY_SWAP.ID),
                new Turn(row.get(DUTY_SWAP.SITE_ID), row.get(DUTY_SWAP.ON_DAY)),
                row.get(SITE.NAME),
                new Named(row.get(DUTY_SWAP.ASKED_BY), row.get(ASKER.CALLED)),
                named(row.get(DUTY_SWAP.ASKED_OF), row.get(ASKED.CALLED)),
                returnDay == null ? null : new Turn(row.get(DUTY_SWAP.RETURN_SITE_ID), returnDay),
                returnDay == null ? "" : row.get(RETURN_SITE.NAME),
                SwapState.of(row.get(DUTY_SWAP.STATE)),
                named(row.get(DUTY_SWAP.TAKEN_BY), row.get(TAKER.CALLED)),
                refusedBy);
    }

    private static @Nullable Named named(@Nullable UUID id, @Nullable String name) {
        return id == null || name == null ? null : new Named(id, name);
    }
}
