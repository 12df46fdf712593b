package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.UUID;
import warmshelf.allocation.PlaceAndDays;
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
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;
import warmshelf.words.PartOfList;

/** All that waits for a coordinator: requests with what is suggested, to be placed one by one or all at once, and the rest. */
public final class RequestListPages implements Pages {
    private static final int LAST_PAGE = 100_000;

    private final HistoryStore histories;
    private final RequestSuggestions suggestions;
    private final PlacementStore placements;
    private final LightAfterHeat lights;
    private final TrialWarmthStore trials;
    private final Aside aside;
    private final ToDecideView others;

    RequestListPages(
            HistoryStore histories,
            RequestSuggestions suggestions,
            PlacementStore placements,
            LightAfterHeat lights,
            TrialWarmthStore trials,
            Aside aside,
            ToDecideView others) {
        this.histories = histories;
        this.suggestions = suggestions;
        this.placements = placements;
        this.lights = lights;
        this.trials = trials;
        this.aside = aside;
        this.others = others;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/requests", this::all, Role.SITE_COORDINATOR);
        routes.post("/requests/placements", this::placeAll, Role.SITE_COORDINATOR);
    }

    @Override
    public int toDecide(Visitor coordinator) {
        return others.count(coordinator);
    }

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
                page(
                        suggestions.of(underWay, visitor.today(), visitor.reach(), visitor.units()),
                        decided,
                        visitor,
                        page(ctx)),
                aside.model(visitor));
    }

    /** Which page of the requests is wanted. */
    private static int page(Context ctx) {
        FormReader asked = new FormReader(ctx.queryParamMap());
        int page =
                asked.optionalWholeNumber("page", SAY.pageField(), 1, LAST_PAGE).orElse(1);
        if (!asked.ok()) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", asked.problems().values()));
        }
        return page;
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
            PartOfList<RequestSuggestions.Line> waiting,
            List<Awaiting.Matter> matters,
            List<History> decided,
            List<String> warnings) {}

    private ListPage page(List<RequestSuggestions.Line> waiting, List<History> decided, Visitor visitor, int number) {
        Map<UUID, SortedMap<LocalDate, Double>> all = new HashMap<>();
        List<TrialWarmth> told = new ArrayList<>();
        for (RequestSuggestions.Line line : waiting) {
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
                PartOfList.of(waiting, number),
                matters.stream().filter(each -> !each.urgent()).toList(),
                decided,
                new TrialWarnings(together).words(visitor.units()));
    }

    private void placeAll(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int placed = 0;
        List<String> clashes = new ArrayList<>();
        for (RequestSuggestions.Line line :
                suggestions.of(histories.underWay(), visitor.today(), visitor.reach(), visitor.units())) {
            if (line.offer() == null) {
                continue;
            }
            PlaceAndDays spot = line.offer().spot();
            LightAfterHeat.Found light =
                    lights.after(line.history().sowing(), line.request(), spot.to(), visitor.today(), visitor.reach());
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
