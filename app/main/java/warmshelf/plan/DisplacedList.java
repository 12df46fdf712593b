package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.placing.LyingStay;
import warmshelf.placing.LyingStore;
import warmshelf.placing.MoveOutlook;
import warmshelf.placing.MoveStore;
import warmshelf.sowing.Asking;
import warmshelf.sowing.SowingStores;

/** What lies on a mat that cannot be used, and where it could go; worked out anew each time, so that it is true when shown. */
final class DisplacedList {
    private static final int DAYS_AHEAD = 400;

    private final SowingStores stores;
    private final LyingStore lying;
    private final OutageDecisionStore outs;

    DisplacedList(SowingStores stores, OutageDecisionStore outs) {
        this.stores = stores;
        this.outs = outs;
        this.lying = new LyingStore(stores.database(), stores.crops(), stores.space());
    }

    /**
     * A stay and its way out.
     *
     * @param carried whether it lies there already, so that it is carried today
     * @param then the place proposed; null: no mat has room that suits it
     */
    public record Proposal(
            LyingStay lying, boolean carried, @Nullable MoveOutlook then) {

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

    /** What lies there on days of the outage, from today on. */
    List<LyingStay> lying(OutageDecisionStore.Out out, LocalDate today) {
        return outs.staysOn(out, today).stream()
                .map(lying::find)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The same, each with a place proposed. */
    List<Proposal> proposals(OutageDecisionStore.Out out, LocalDate today) {
        List<LyingStay> stays = lying(out, today);
        List<CandidatePlace> places = lying.places();
        Map<UUID, UUID> sites = outs.sitesOfMats();
        List<DisplacedFit.Displaced> displaced = new ArrayList<>();
        for (LyingStay stay : stays) {
            Set<UUID> near = new HashSet<>(sites.keySet());
            near.removeIf(mat -> !Objects.equals(sites.get(mat), sites.get(out.matId())));
            displaced.add(new DisplacedFit.Displaced(
                    stay,
                    wish(stay, today),
                    lying.around(stay.stay().id(), places, today, today.plusDays(DAYS_AHEAD))
                            .board(),
                    mat -> near.contains(mat.id())));
        }
        Map<UUID, SpaceOffer> found = new DisplacedFit(today).places(displaced);
        Map<UUID, CandidatePlace> byId = places.stream().collect(Collectors.toMap(CandidatePlace::id, place -> place));
        return stays.stream()
                .map(stay -> {
                    SpaceOffer offer = found.get(stay.stay().id());
                    return new Proposal(
                            stay,
                            stay.isBegunBy(today),
                            offer == null
                                    ? null
                                    : new MoveOutlook(
                                            Objects.requireNonNull(byId.get(offer.placeId())),
                                            offer.spot(),
                                            offer.warm(),
                                            List.of(),
                                            false));
                })
                .toList();
    }

    /** What lies there already keeps its last day; what has not begun keeps its first where it can, within its window. */
    private SpaceWish wish(LyingStay stay, LocalDate today) {
        Band band = Objects.requireNonNull(stay.band());
        UUID sowing = stay.stay().sowingId();
        int quarters = stay.stay().slot().quarters();
        if (stay.isBegunBy(today)) {
            int left = (int) (stay.stay().to().toEpochDay() - today.toEpochDay());
            return new SpaceWish(sowing, quarters, today, today, today, band, celsius -> left);
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
        IntUnaryOperator days = stores.sowings()
                .find(sowing)
                .map(found -> stores.planner().daysAt(Asking.of(found), today, stay.days()))
                .orElse(celsius -> stay.days());
        return new SpaceWish(sowing, quarters, earliest, ideal, latest, band, days);
    }
}
