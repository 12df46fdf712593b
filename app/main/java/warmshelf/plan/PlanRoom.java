package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.placing.LightAfterHeat;
import warmshelf.placing.MoveStore;
import warmshelf.placing.PlacementStore;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.shelf.Outage;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Awaiting;
import warmshelf.web.Pages;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;

/** Season plans, wired; and what they add to the pages of other rooms. */
public final class PlanRoom {
    private static final Duration BEAT = Duration.ofSeconds(3);

    private final SowingStores stores;
    private final ChoiceRankStore ranks;
    private final PlanNoteStore notes;
    private final FreedSpaceStore freed;
    private final WaitingList waiting;

    public PlanRoom(SowingStores stores) {
        this.stores = stores;
        ranks = new ChoiceRankStore(stores.database(), stores.audit());
        notes = new PlanNoteStore(stores.database(), stores.audit());
        freed = new FreedSpaceStore(stores.database(), stores.audit());
        waiting = new WaitingList(stores, freed, new TrialWarmthStore(stores.database()));
    }

    public List<Pages> pages(PlacementStore placements) {
        PlanStore plans = new PlanStore(stores.database(), stores.audit());
        OutageDecisionStore outs = new OutageDecisionStore(stores.database(), stores.audit());
        PlanQuestionStore questions = new PlanQuestionStore(stores, ranks);
        TrialWarmthStore trials = new TrialWarmthStore(stores.database());
        KeptPlanView view = new KeptPlanView(plans, questions, notes, freed, trials);
        PlanWarmthStore warmth = new PlanWarmthStore(stores.matDays(), stores.audit());
        return List.of(
                // before the pages whose address holds an id in the same place
                new FairnessPages(new FairnessStore(stores.database()), ranks),
                new OutagePages(
                        outs,
                        new DisplacedList(stores, outs, new QuickPlanner()),
                        new MoveStore(stores.database(), stores.audit(), stores.stays(), stores.requests()),
                        stores.space(),
                        trials,
                        new AddressedSiteStore(stores.database().sql())),
                new PlanPages(plans, questions, new PlanJob(plans, new SearchPlanner(), BEAT), view),
                new PlanEditPages(plans, view),
                new PlanPublishPages(
                        plans,
                        view,
                        new PlanPublishStore(stores, plans, notes, warmth, freed),
                        new PlanUndoStore(stores, plans, notes, warmth),
                        freed),
                new MemberPlanPages(
                        ranks, notes, waiting, placements, new LightAfterHeat(stores.planner(), stores.space())));
    }

    /** What Today tells a member of the last publication, and of mats that cannot be used. */
    public Aside today() {
        OutageTodayStore outs = new OutageTodayStore(stores.database());
        return visitor -> {
            List<OutageTodayStore.MatOut> out = outs.on(visitor.today());
            return Map.of(
                    "planNotes",
                    notes.ofMember(visitor.memberId(), visitor.units()),
                    "matsOut",
                    out.stream()
                            .filter(each -> each.stays() > 0)
                            .filter(each -> visitor.reach().covers(each.site())
                                    || each.concerned().contains(visitor.memberId()))
                            .toList(),
                    "outToday",
                    out.stream()
                            .map(OutageTodayStore.MatOut::outage)
                            .filter(outage -> outage.covers(visitor.today()))
                            .collect(Collectors.toMap(Outage::matId, outage -> outage, (one, other) -> one)));
        };
    }

    /** Mats that cannot be used while something lies there, and room that a plan taken back holds. */
    public Awaiting awaiting() {
        OutageTodayStore outs = new OutageTodayStore(stores.database());
        return coordinator -> outs.on(coordinator.today()).stream()
                .filter(out -> out.stays() > 0 && coordinator.reach().covers(out.site()))
                .map(PlanRoom::matter)
                .toList();
    }

    private static Awaiting.Matter matter(OutageTodayStore.MatOut out) {
        return new Awaiting.Matter(
                SAY.matOut(
                        out.mat(),
                        DayWords.span(out.outage().from(), out.outage().to()),
                        out.stays()),
                out.outage().reason(),
                "/plans/out-of-service/" + out.outage().id(),
                true);
    }

    /** What My sowings adds: notes, freed places, and which request is the first choice. */
    public Aside ownSowings() {
        return visitor -> Map.of(
                "planNotes",
                notes.ofMember(visitor.memberId(), visitor.units()),
                "freedPlaces",
                waiting.ofMember(visitor.memberId(), visitor.today()),
                "choices",
                ranks.choices());
    }

    /** Who waits and fits into freed room, and what of it an undone plan holds back; plans are of the whole group. */
    public Aside requests() {
        return this::freedPlaces;
    }

    private Map<String, Object> freedPlaces(Visitor visitor) {
        return visitor.coordinator()
                ? Map.of("freedPlaces", waiting.all(visitor.today()), "heldBack", freed.heldBeyond(visitor.today()))
                : Map.of("freedPlaces", List.of(), "heldBack", List.of());
    }
}
