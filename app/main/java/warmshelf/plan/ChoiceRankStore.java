package warmshelf.plan;

import static warmshelf.db.generated.Tables.REQUEST_RANK;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.sowing.SowingStore;

/**
 * Which of a member's requests is their first choice, which the second. Requests that were refused or withdrawn do not count,
 * so the next one takes their turn.
 */
final class ChoiceRankStore {
    private final DSLContext sql;
    private final Audit audit;

    ChoiceRankStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** The rank of every request among its member's own of the season, from 1, by sowing. */
    Map<UUID, Integer> choices() {
        Map<String, Integer> counts = new HashMap<>();
        Map<UUID, Integer> choices = new HashMap<>();
        sql.select(SOWING.ID, SOWING.MEMBER_ID, SOWING.SEASON)
                .from(SPACE_REQUEST)
                .join(SOWING)
                .on(SOWING.ID.eq(SPACE_REQUEST.SOWING_ID))
                .leftJoin(REQUEST_RANK)
                .on(REQUEST_RANK.SOWING_ID.eq(SOWING.ID))
                .where(SPACE_REQUEST.STATE.in("waiting", "placed"))
                .orderBy(REQUEST_RANK.RANK.asc().nullsLast(), SOWING.ASKED_AT, SOWING.ID)
                .forEach(row ->
                        choices.put(row.value1(), counts.merge(row.value2() + " " + row.value3(), 1, Integer::sum)));
        return choices;
    }

    /** Makes a waiting request its member's first choice; a no when it is not the member's, or does not wait. */
    Decision<UUID> putFirst(UUID sowing, UUID member) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Optional<Integer> season = tx.select(SOWING.SEASON)
                    .from(SOWING)
                    .join(SPACE_REQUEST)
                    .on(SPACE_REQUEST.SOWING_ID.eq(SOWING.ID))
                    .where(SOWING.ID.eq(sowing), SOWING.MEMBER_ID.eq(member), SPACE_REQUEST.STATE.eq("waiting"))
                    .fetchOptional(SOWING.SEASON);
            if (season.isEmpty()) {
                return new Decision.Refused<>(new PlanRefusal.NotYoursToPutFirst());
            }
            List<UUID> order = new ArrayList<>(List.of(sowing));
            own(tx, member, season.get()).stream()
                    .filter(id -> !id.equals(sowing))
                    .forEach(order::add);
            tx.deleteFrom(REQUEST_RANK).where(REQUEST_RANK.SOWING_ID.in(order)).execute();
            for (int i = 0; i < order.size(); i++) {
                tx.insertInto(REQUEST_RANK)
                        .set(REQUEST_RANK.SOWING_ID, order.get(i))
                        .set(REQUEST_RANK.RANK, i + 1)
                        .execute();
            }
            audit.write(tx, member, "put first", "sowing", sowing, "first of " + order.size());
            return new Decision.Done<>(sowing);
        });
    }

    /** A member's requests of a season in their order, held so that two presses at once take turns. */
    private static List<UUID> own(DSLContext tx, UUID member, int season) {
        tx.select(SOWING.ID)
                .from(SOWING)
                .where(SOWING.MEMBER_ID.eq(member), SowingStore.ofSeason(season))
                .orderBy(SOWING.ID)
                .forUpdate()
                .fetch();
        return tx.select(SOWING.ID)
                .from(SPACE_REQUEST)
                .join(SOWING)
                .on(SOWING.ID.eq(SPACE_REQUEST.SOWING_ID))
                .leftJoin(REQUEST_RANK)
                .on(REQUEST_RANK.SOWING_ID.eq(SOWING.ID))
                .where(SOWING.MEMBER_ID.eq(member), SowingStore.ofSeason(season))
                .orderBy(REQUEST_RANK.RANK.asc().nullsLast(), SOWING.ASKED_AT, SOWING.ID)
                .fetch(SOWING.ID);
    }
}
