package warmshelf.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.allocation.Surroundings;
import warmshelf.allocation.WarmDays;
import warmshelf.decision.Reach;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.placing.LyingStay;
import warmshelf.placing.LyingStore;
import warmshelf.placing.MoveOutlook;
import warmshelf.placing.MoveStore;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.sowing.Asking;
import warmshelf.sowing.SowingStores;

/** What lies on a mat that cannot be used, and where it could go; worked out anew each time, so that it is true when shown. */
final class DisplacedList {
    private static final int DAYS_AHEAD = 400;

    private final SowingStores stores;
    private final LyingStore lying;
    private final OutageDecisionStore outs;
    private final Function<PlanQuestion, SeasonPlan> planner;

    /** @param planner gives the same plan for the same question */
    DisplacedList(SowingStores stores, OutageDecisionStore outs, Function<PlanQuestion, SeasonPlan> planner) {
        this.planner = planner;
        this.stores = stores;
        this.outs = outs;
        this.lying = new LyingStore(stores.database(), stores.crops(), stores.space());
    }

    /**
     * A stay and its way out.
     *
     * @param carried whether it lies there already, so that it is carried today
     * @param then the place proposed; null: none was found
     * @param alone whether it can be moved now, before any other
     * @param turn where it stands in an order in which all can be moved
     * @param lack what keeps it from having a place; null where it has one
     */
    public record Proposal(
            LyingStay lying,
            boolean carried,
            @Nullable MoveOutlook then,
            boolean alone,
            int turn,
            @Nullable NoOtherPlace lack) {

        /** What a form sends to say that it was shown. */
        public String key() {
            return "%s/%d/%s"
                    .formatted(
                            lying.stay().id(),
                            lying.stay().version(),
                            Objects.requireNonNull(then).key());
        }

        MoveStore.Change change() {
            MoveOutlook move = Objects.requireNonNull(then);
            return new MoveStore.Change(lying, move.spot(), move.warm());
        }
    }

    /**
     * What lies on a mat and where it could go.
     *
     * @param stays in the order in which they begin and lie
     * @param mostProven whether it is proven that no arrangement places more of them
     */
    public record Proposals(List<Proposal> stays, boolean mostProven) {
        public static final Proposals NONE = new Proposals(List.of(), true);

        /** Those with a place, in an order in which they can be moved one after the other. */
        public List<Proposal> placed() {
            return stays.stream()
                    .filter(each -> each.then() != null)
                    .sorted(Comparator.comparingInt(Proposal::turn))
                    .toList();
        }

        /** The set-points at the places proposed, of each day on a mat, by sowing. */
        Map<UUID, SortedMap<LocalDate, Double>> warmth() {
            Map<UUID, SortedMap<LocalDate, Double>> warmth = new HashMap<>();
            for (Proposal each : placed()) {
                WarmDays warm = each.change().warm();
                if (warm != null) {
                    warmth.put(each.lying().stay().sowingId(), TrialWarmthStore.byDay(warm));
                }
            }
            return warmth;
        }
    }

    /** What lies there on days of the outage, from today on. */
    List<LyingStay> lying(OutageDecisionStore.Out out, LocalDate today) {
        return outs.staysOn(out, today).stream()
                .map(lying::find)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The same, each with a place proposed where there is one, of those on which somebody may decide. */
    Proposals proposals(OutageDecisionStore.Out out, LocalDate today, Reach reach) {
        List<LyingStay> stays = lying(out, today);
        if (stays.isEmpty()) {
            return Proposals.NONE;
        }
        List<CandidatePlace> places = lying.places(reach);
        DisplacedBoard room = room(stays, near(out), places, today);
        DisplacedPlan.Proposed proposed = new DisplacedPlan(room, planner).propose();
        Map<UUID, CandidatePlace> byId = places.stream().collect(Collectors.toMap(CandidatePlace::id, place -> place));
        List<UUID> turns = List.copyOf(proposed.places().keySet());
        DisplacedLack lack = new DisplacedLack(room, proposed.places());
        List<Proposal> proposals = room.displaced().stream()
                .map(each -> {
                    SpaceOffer offer = proposed.places().get(each.id());
                    boolean carried = each.lying().isBegunBy(today);
                    return offer == null
                            ? new Proposal(each.lying(), carried, null, false, 0, lack.of(each))
                            : new Proposal(
                                    each.lying(),
                                    carried,
                                    outlook(Objects.requireNonNull(byId.get(offer.placeId())), offer),
                                    room.fits(each, offer, Map.of()),
                                    turns.indexOf(each.id()),
                                    null);
                })
                .toList();
        return new Proposals(proposals, proposed.mostProven());
    }

    private DisplacedBoard room(List<LyingStay> stays, Set<UUID> near, List<CandidatePlace> places, LocalDate today) {
        Set<UUID> ids = stays.stream().map(each -> each.stay().id()).collect(Collectors.toSet());
        Surroundings around = lying.around(ids, places, today, today.plusDays(DAYS_AHEAD));
        Set<UUID> offered =
                stores.space().offeredMats().stream().map(MatSpace::id).collect(Collectors.toSet());
        return new DisplacedBoard(
                around.board(),
                stays.stream()
                        .map(each -> new Displaced(
                                each, wish(each, today), near, closed(each, places, offered, around.holds(), today)))
                        .toList());
    }

    /** The mats that are not for a stay: of quarantine shelves unless it lies on one, then all others; and what a held rack forbids. */
    private static Set<UUID> closed(
            LyingStay each, List<CandidatePlace> places, Set<UUID> offered, RackHolds holds, LocalDate today) {
        UUID lies = each.stay().placeId();
        boolean apart = !offered.contains(each.matId());
        Predicate<UUID> isHeld = to -> each.isBegunBy(today)
                ? holds.inTheWay(lies, to).isPresent()
                : holds.keepsOut(Set.of(lies), to).isPresent();
        return places.stream()
                .flatMap(place -> Stream.ofNullable(place.mat())
                        .map(MatSpace::id)
                        .filter(mat -> offered.contains(mat) == apart || isHeld.test(place.id())))
                .collect(Collectors.toSet());
    }

    /** The mats at its site. */
    private Set<UUID> near(OutageDecisionStore.Out out) {
        Map<UUID, UUID> sites = outs.sitesOfMats();
        return sites.keySet().stream()
                .filter(mat -> Objects.equals(sites.get(mat), sites.get(out.matId())))
                .collect(Collectors.toSet());
    }

    private static MoveOutlook outlook(CandidatePlace place, SpaceOffer offer) {
        return new MoveOutlook(place, offer.spot(), offer.warm(), List.of(), false);
    }

    /** What lies there already keeps its last day; what has not begun keeps its first where it can, within its window. */
    private SpaceWish wish(LyingStay stay, LocalDate today) {
        Band band = Objects.requireNonNull(stay.band());
        UUID sowing = stay.stay().sowingId();
        int quarters = stay.stay().slot().quarters();
        if (stay.isBegunBy(today)) {
            int left = (int) (stay.stay().to().toEpochDay() - today.toEpochDay());
            return new SpaceWish(sowing, quarters, today, today, today, band, stay.needsLight(), celsius -> left);
        }
        LocalDate ideal = stay.firstDayFrom(today);
        Optional<SpaceRequest> request = stores.requests().find(sowing);
        LocalDate earliest = request.map(SpaceRequest::earliest)
                .filter(day -> day.isBefore(ideal))
                .map(day -> day.isBefore(today) ? today : day)
                .orElse(ideal);
        LocalDate latest = request.map(SpaceRequest::latest)
                .filter(day -> day.isAfter(ideal))
                .orElse(ideal);
        DoubleToIntFunction days = stores.sowings()
                .find(sowing)
                .map(found -> stores.planner().daysAt(Asking.of(found), today, stay.days()))
                .orElse(celsius -> stay.days());
        return new SpaceWish(sowing, quarters, earliest, ideal, latest, band, stay.needsLight(), days);
    }
}
