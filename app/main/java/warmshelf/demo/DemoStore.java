package warmshelf.demo;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.demo.DemoDecisions.done;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.StayStore;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.sowing.SeedClaimStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStore;

/** Calls several stores in one transaction, as the pages of each feature do. */
final class DemoStore {
    private final DSLContext sql;
    private final MemberStore members;
    private final GroupStore group;
    private final LotStore lots;
    private final SowingStore sowings;
    private final RequestStore requests;
    private final StayStore stays;
    private final SeedClaimStore claims;

    DemoStore(
            Database database,
            MemberStore members,
            GroupStore group,
            LotStore lots,
            SowingStore sowings,
            RequestStore requests,
            StayStore stays,
            SeedClaimStore claims) {
        this.sql = database.sql();
        this.members = members;
        this.group = group;
        this.lots = lots;
        this.sowings = sowings;
        this.requests = requests;
        this.stays = stays;
        this.claims = claims;
    }

    /** When something was last done in a group. */
    static Instant lastMoment(Database database) {
        return database.sql()
                .select(DSL.max(AUDIT_LINE.AT))
                .from(AUDIT_LINE)
                .fetchSingle()
                .value1()
                .toInstant();
    }

    /** A person of the demo. */
    record Person(NewMember member, boolean coordinator) {}

    /** Opens the group in the name of the first person and lets everyone join; answers with their ids by name. */
    Map<String, UUID> moveIn(GroupProfile profile, List<Person> people) {
        return sql.transactionResult(inside -> {
            Map<String, UUID> ids = new LinkedHashMap<>();
            for (Person person : people) {
                String how = ids.isEmpty() ? "opened the demo group" : "joined the demo group";
                UUID id = members.add(inside.dsl(), person.member(), person.coordinator(), how);
                if (ids.isEmpty()) {
                    group.open(inside.dsl(), profile, id);
                }
                ids.put(person.member().name(), id);
            }
            return ids;
        });
    }

    /** A lot with the tests that were made of it. */
    record TestedLot(NewLot lot, List<GerminationTest> tests) {}

    /** Puts lots into the seed box; answers with their ids in the same order. */
    List<UUID> addLots(List<TestedLot> box, UUID by) {
        return sql.transactionResult(inside -> box.stream()
                .map(tested -> {
                    UUID id = lots.add(inside.dsl(), tested.lot(), by);
                    tested.tests().forEach(test -> lots.recordTest(inside.dsl(), id, test, by));
                    return id;
                })
                .toList());
    }

    /**
     * Keeps a sowing with its request, if it has one, and holds its seed. Seed of somebody else is asked for.
     *
     * @param answered whether whoever is asked says yes at once; else the question waits for them
     */
    void ask(Sowing sowing, @Nullable SpaceRequest request, boolean answered) {
        UUID by = sowing.grower().memberId();
        SeedClaimStore.Held held = done(Decision.of(() -> sql.transactionResult(
                inside -> claims.claim(inside.dsl(), sowing, () -> keep(inside.dsl(), sowing, request), by))));
        SeedClaimStore.Owner asked = held.asked();
        if (answered && asked != null) {
            done(claims.answer(sowing.id(), sowing.seeds(), "", asked.id()));
        }
    }

    private void keep(DSLContext tx, Sowing sowing, @Nullable SpaceRequest request) {
        sowings.add(tx, sowing, sowing.grower().memberId());
        if (request != null) {
            requests.add(tx, request);
        }
    }

    /** Lays a waiting request where it was offered room. */
    void place(SpaceRequest request, SpaceOffer offer, UUID by) {
        sql.transaction(inside -> {
            stays.layOnMat(inside.dsl(), request.sowingId(), offer.spot(), offer.warm(), request.band(), by);
            decide(inside.dsl(), request, SpaceRequest.State.PLACED, "", by);
        });
    }

    void refuse(SpaceRequest request, String reason, UUID by) {
        sql.transaction(inside -> decide(inside.dsl(), request, SpaceRequest.State.REFUSED, reason, by));
    }

    /** Everyone has looked until then: what was told before is not new to them any more. */
    void seeNews(Instant until) {
        OffsetDateTime moment = until.atOffset(ZoneOffset.UTC);
        sql.update(NEWS)
                .set(NEWS.SEEN_AT, NEWS.TOLD_AT)
                .where(NEWS.TOLD_AT.lt(moment))
                .execute();
    }

    private void decide(DSLContext tx, SpaceRequest request, SpaceRequest.State state, String reason, UUID by) {
        done(requests.decide(tx, request, state, reason, by));
    }
}
