package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceAnswer;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.decision.Decision;
import warmshelf.finding.trial.TrialWarmth;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.finding.trial.TrialWarnings;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.web.Aside;
import warmshelf.web.Awaiting;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Units;

/** All that waits for a coordinator: requests with what is suggested, to be placed one by one or all at once, and the rest. */
public final class RequestListPages implements Pages {
    private final HistoryStore histories;
    private final RequestWishes wishes;
    private final PlacementStore placements;
    private final LightAfterHeat lights;
    private final TrialWarmthStore trials;
    private final Aside aside;
    private final ToDecideView others;

    RequestListPages(
            HistoryStore histories,
            RequestWishes wishes,
            PlacementStore placements,
            LightAfterHeat lights,
            TrialWarmthStore trials,
            Aside aside,
            ToDecideView others) {
        this.histories = histories;
        this.wishes = wishes;
        this.placements = placements;
        this.lights = lights;
        this.trials = trials;
        this.aside = aside;
        this.others = others;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/requests", this::all, Role.COORDINATOR);
        routes.post("/requests/placements", this::placeAll, Role.COORDINATOR);
    }

    @Override
    public int toDecide(Visitor coordinator) {
        return others.count(coordinator);
    }

    /**
     * A waiting request with what first fit suggests for it.
     *
     * @param warnings what placing this one as suggested would do to a trial that it is of
     */
    public record Line(
            History history,
            SpaceRequest request,
            @Nullable SpaceOffer offer,
            @Nullable String noSpace,
            TrialWarnings warnings) {}

    private void all(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<History> underWay = histories.underWay();
        List<History> decided = underWay.stream()
                .filter(history -> history.sowing().stage().isBeforeSowing())
                .filter(history ->
                        history.request() != null && !history.request().isWaiting())
                .toList();
        Respond.page(
                ctx,
                "placing/requests.peb",
                page(suggestions(visitor, underWay), decided, visitor),
                aside.model(visitor));
    }

    /**
     * What waits, with what is suggested for it, and what is decided but not sown yet.
     *
     * @param urgent what cannot wait, beside the requests
     * @param matters what else waits
     * @param warnings what placing all as suggested would do to trials, beyond what stands at each
     */
    private record ListPage(
            List<Awaiting.Matter> urgent,
            List<Line> waiting,
            List<Awaiting.Matter> matters,
            List<History> decided,
            List<String> warnings) {}

    private ListPage page(List<Line> waiting, List<History> decided, Visitor visitor) {
        Map<UUID, SortedMap<LocalDate, Double>> all = new HashMap<>();
        List<TrialWarmth> told = new ArrayList<>();
        for (Line line : waiting) {
            if (line.offer() != null && line.history().sowing().trial() != null) {
                all.put(
                        line.request().sowingId(),
                        TrialWarmthStore.byDay(line.offer().warm()));
                told.addAll(line.warnings().apart());
            }
        }
        List<TrialWarmth> together = new ArrayList<>(trials.apart(all));
        together.removeAll(told);
        List<Awaiting.Matter> matters = others.matters(visitor);
        return new ListPage(
                matters.stream().filter(Awaiting.Matter::urgent).toList(),
                waiting,
                matters.stream().filter(each -> !each.urgent()).toList(),
                decided,
                new TrialWarnings(together).words(visitor.units()));
    }

    private List<Line> suggestions(Visitor visitor, List<History> underWay) {
        LocalDate today = visitor.today();
        List<SpaceWish> asked = new ArrayList<>();
        Map<UUID, History> waiting = new HashMap<>();
        for (History history : underWay) {
            if (history.request() != null && history.request().isWaiting()) {
                waiting.put(history.sowing().id(), history);
                asked.add(wishes.of(history, history.request(), today));
            }
        }
        List<Line> lines = new ArrayList<>();
        new FirstFit(wishes.board(today), today).answerAll(asked).forEach((sowing, answer) -> {
            History history = waiting.get(sowing);
            if (history != null && history.request() != null) {
                lines.add(line(history, history.request(), answer, visitor.units()));
            }
        });
        return lines;
    }

    private Line line(History history, SpaceRequest request, SpaceAnswer answer, Units units) {
        if (answer instanceof SpaceAnswer.Space found) {
            return new Line(
                    history,
                    request,
                    found.offer(),
                    null,
                    trials.warnings(history.sowing(), found.offer().warm()));
        }
        return new Line(
                history, request, null, ((SpaceAnswer.None) answer).reason().words(units), TrialWarnings.NONE);
    }

    private void placeAll(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int placed = 0;
        List<String> clashes = new ArrayList<>();
        for (Line line : suggestions(visitor, histories.underWay())) {
            if (line.offer() == null) {
                continue;
            }
            PlaceAndDays spot = line.offer().spot();
            LightAfterHeat.Found light =
                    lights.after(line.history().sowing(), line.request(), spot.to(), visitor.today());
            Decision<UUID> decision = placements.place(
                    line.request().sowingId(), spot, line.offer().warm(), light.spot(), visitor.memberId());
            if (decision instanceof Decision.Done) {
                placed++;
            } else {
                clashes.add(line.history().sowing().title() + ": " + Decisions.words(decision, visitor.units()));
            }
        }
        String told = placed == 0 ? SAY.nothingPlaced() : SAY.placedAsSuggested(placed);
        Respond.seeOther(ctx, "/requests", clashes.isEmpty() ? told : told + " " + String.join(" ", clashes));
    }
}
