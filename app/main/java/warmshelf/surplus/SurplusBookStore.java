package warmshelf.surplus;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SURPLUS_OFFER;
import static warmshelf.db.generated.Tables.SURPLUS_TAKING;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.Stay;
import warmshelf.db.generated.tables.Member;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.History;
import warmshelf.sowing.SowingStores;

/** Reads what is given away, and who takes it. */
public final class SurplusBookStore {
    /** So long somebody is told that the other side ended what was taken. */
    private static final int TOLD_DAYS = 7;
    /** After one of these steps a grower knows how many plants are over, for so many days. */
    private static final List<String> STEPS_THAT_LEAVE_SOME = List.of(
            EntryStep.MOVED_TO_CELLS.word(),
            EntryStep.UNDER_LIGHT.word(),
            EntryStep.TAKEN_HOME.word(),
            EntryStep.POTTED_ON.word(),
            EntryStep.HARDENING_OFF.word(),
            EntryStep.PLANTED_OUT.word());

    private static final int ASKED_DAYS = 3;

    private static final Member ENDER = MEMBER.as("ender");

    private final SowingStores stores;

    public SurplusBookStore(SowingStores stores) {
        this.stores = stores;
    }

    /** All that is given away in a season or later and by growers who are still here, also what has ended; the newest first. */
    List<Surplus> all(SurplusStore.Moment moment) {
        return read(SOWING.SEASON.ge(moment.season()), moment);
    }

    /** The same of one sowing, also while nothing of it is offered; empty: there is no such sowing. */
    Optional<Surplus> find(UUID sowing, SurplusStore.Moment moment) {
        return read(SOWING.ID.eq(sowing), moment).stream()
                .findFirst()
                .or(() ->
                        stores.histories().find(sowing).map(history -> surplus(history, 0, List.of(), judge(moment))));
    }

    private SurplusJudge judge(SurplusStore.Moment moment) {
        return new SurplusJudge(moment.today(), moment.season(), RackHoldStore.read(sql()));
    }

    private static Optional<SurplusRefusal> whyClosed(SurplusJudge judge, History history) {
        return judge.whyClosed(history.sowing(), history.progress(), history.stays());
    }

    private List<Surplus> read(Condition which, SurplusStore.Moment moment) {
        Map<UUID, Integer> offered = sql().select(SURPLUS_OFFER.SOWING_ID, SURPLUS_OFFER.PLANTS)
                .from(SURPLUS_OFFER)
                .join(SOWING)
                .on(SOWING.ID.eq(SURPLUS_OFFER.SOWING_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .where(which, MEMBER.LEFT_AT.isNull())
                .orderBy(SURPLUS_OFFER.OFFERED_AT.desc(), SURPLUS_OFFER.SOWING_ID)
                .fetchMap(SURPLUS_OFFER.SOWING_ID, SURPLUS_OFFER.PLANTS);
        if (offered.isEmpty()) {
            return List.of();
        }
        Map<UUID, List<Taking>> takings = takings(offered.keySet());
        Map<UUID, History> histories = stores.histories().all(offered.keySet());
        SurplusJudge judge = judge(moment);
        return offered.entrySet().stream()
                .flatMap(each -> Optional.ofNullable(histories.get(each.getKey())).stream()
                        .map(history -> surplus(
                                history, each.getValue(), takings.getOrDefault(each.getKey(), List.of()), judge)))
                .toList();
    }

    private static Surplus surplus(History history, int offered, List<Taking> takings, SurplusJudge judge) {
        int taken =
                takings.stream().filter(Taking::stands).mapToInt(Taking::plants).sum();
        @Nullable SurplusRefusal closed = whyClosed(judge, history).orElse(null);
        @Nullable Stay stay = history.stayOn(judge.today());
        return new Surplus(
                history.sowing(),
                history.progress(),
                offered,
                closed == null ? SurplusJudge.free(history.sowing(), history.progress(), offered, taken) : 0,
                closed,
                stay == null ? null : stay.where(),
                takings);
    }

    /** One taking; empty: there is none. */
    Optional<Taking> taking(UUID id) {
        return takings(SURPLUS_TAKING.ID.eq(id)).stream().findFirst();
    }

    private Map<UUID, List<Taking>> takings(Collection<UUID> sowings) {
        return takings(SURPLUS_TAKING
                        .SOWING_ID
                        .in(sowings)
                        .and(SURPLUS_TAKING
                                .ENDED_AT
                                .isNull()
                                .or(SURPLUS_TAKING.ENDED_AT.gt(
                                        stores.audit().now().minusDays(TOLD_DAYS)))))
                .stream()
                .collect(java.util.stream.Collectors.groupingBy(Taking::sowingId));
    }

    private List<Taking> takings(Condition which) {
        return sql().select(
                        SURPLUS_TAKING.ID,
                        SURPLUS_TAKING.SOWING_ID,
                        SURPLUS_TAKING.MEMBER_ID,
                        MEMBER.CALLED,
                        SURPLUS_TAKING.PLANTS,
                        SURPLUS_TAKING.HANDED_OVER_AT,
                        SURPLUS_TAKING.ENDED_BY,
                        ENDER.CALLED)
                .from(SURPLUS_TAKING)
                .join(MEMBER)
                .on(MEMBER.ID.eq(SURPLUS_TAKING.MEMBER_ID))
                .leftJoin(ENDER)
                .on(ENDER.ID.eq(SURPLUS_TAKING.ENDED_BY))
                .where(which)
                .orderBy(SURPLUS_TAKING.TAKEN_AT, SURPLUS_TAKING.ID)
                .fetch(row -> new Taking(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        row.value4(),
                        row.value5(),
                        row.value6() != null,
                        row.value7(),
                        row.value8()));
    }

    /** A member's sowings that went a step on lately, have more plants than were wanted, and of which nothing was offered yet. */
    List<History> leftOver(UUID member, SurplusStore.Moment moment) {
        List<UUID> moved = sql().selectDistinct(SOWING.ID)
                .from(SOWING)
                .join(ENTRY)
                .on(ENTRY.SOWING_ID.eq(SOWING.ID))
                .where(
                        SOWING.MEMBER_ID.eq(member),
                        SOWING.SEASON.ge(moment.season()),
                        ENTRY.STEP.in(STEPS_THAT_LEAVE_SOME),
                        ENTRY.SEEN_ON.gt(moment.today().minusDays(ASKED_DAYS)),
                        DSL.notExists(DSL.selectOne().from(SURPLUS_OFFER).where(SURPLUS_OFFER.SOWING_ID.eq(SOWING.ID))))
                .fetch(SOWING.ID);
        SurplusJudge judge = judge(moment);
        return stores.histories().all(moved).values().stream()
                .filter(history -> SurplusJudge.beyondWanted(history.sowing(), history.progress()) > 0
                        && whyClosed(judge, history).isEmpty())
                .sorted(java.util.Comparator.comparing(
                        history -> history.sowing().title()))
                .toList();
    }

    private DSLContext sql() {
        return stores.database().sql();
    }
}
