package warmshelf.placing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceAnswer;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceClash;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.SpaceWish;
import warmshelf.sowing.AskPlanner;
import warmshelf.sowing.Asking;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.SowingPlanner;
import warmshelf.web.Aside;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** The coordinator's requests: what waits, what is suggested, and the decision on each. */
public final class RequestPages implements Pages {
    private static final int DAYS_AHEAD = 400;
    private static final int OFFERS = 6;

    private final HistoryStore histories;
    private final SowingPlanner planner;
    private final SpaceStore space;
    private final PlacementStore placements;
    private final LightAfterHeat lights;
    private final Aside aside;

    RequestPages(
            HistoryStore histories, SowingPlanner planner, SpaceStore space, PlacementStore placements, Aside aside) {
        this.histories = histories;
        this.planner = planner;
        this.space = space;
        this.placements = placements;
        this.lights = new LightAfterHeat(planner, space);
        this.aside = aside;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/requests", this::all, Role.COORDINATOR);
        routes.post("/requests/placements", this::placeAll, Role.COORDINATOR);
        routes.get("/requests/{id}", this::one, Role.COORDINATOR);
        routes.post("/requests/{id}/placement", this::place, Role.COORDINATOR);
        routes.post("/requests/{id}/refusal", this::refuse, Role.COORDINATOR);
        routes.post("/requests/{id}/return", this::takeBack, Role.COORDINATOR);
    }

    /** A waiting request with what first fit suggests for it. */
    public record Line(
            History history,
            SpaceRequest request,
            @Nullable SpaceOffer offer,
            @Nullable String noSpace) {}

    private void all(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<History> underWay = histories.underWay();
        Map<String, Object> model = new HashMap<>(aside.model(visitor));
        model.put("waiting", suggestions(visitor, underWay));
        model.put(
                "decided",
                underWay.stream()
                        .filter(history -> history.sowing().stage().isBeforeSowing())
                        .filter(history ->
                                history.request() != null && !history.request().isWaiting())
                        .toList());
        ctx.render("placing/requests.peb", model);
    }

    private List<Line> suggestions(Visitor visitor, List<History> underWay) {
        LocalDate today = visitor.today();
        List<SpaceWish> wishes = new ArrayList<>();
        Map<UUID, History> waiting = new HashMap<>();
        for (History history : underWay) {
            if (history.request() != null && history.request().isWaiting()) {
                waiting.put(history.sowing().id(), history);
                wishes.add(wish(history, history.request(), today));
            }
        }
        List<Line> lines = new ArrayList<>();
        new FirstFit(board(today), today).answerAll(wishes).forEach((sowing, answer) -> {
            History history = waiting.get(sowing);
            if (history != null && history.request() != null) {
                lines.add(line(history, history.request(), answer, visitor.units()));
            }
        });
        return lines;
    }

    private static Line line(History history, SpaceRequest request, SpaceAnswer answer, Units units) {
        if (answer instanceof SpaceAnswer.Space found) {
            return new Line(history, request, found.offer(), null);
        }
        return new Line(history, request, null, AskPlanner.sentence(((SpaceAnswer.None) answer).reason(), units));
    }

    private SpaceWish wish(History history, SpaceRequest request, LocalDate today) {
        return new SpaceWish(
                request.sowingId(),
                request.quarters(),
                request.earliest(),
                request.ideal(),
                request.latest(),
                request.band(),
                planner.daysAt(Asking.of(history.sowing()), today, request.days()));
    }

    private SpaceCalendar board(LocalDate today) {
        return space.board(today, today.plusDays(DAYS_AHEAD));
    }

    private void placeAll(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int placed = 0;
        List<String> clashes = new ArrayList<>();
        for (Line line : suggestions(visitor, histories.underWay())) {
            if (line.offer() == null) {
                continue;
            }
            try {
                PlaceAndDays spot = line.offer().spot();
                LightAfterHeat.Found light =
                        lights.after(line.history().sowing(), line.request(), spot.to(), visitor.today());
                placements.place(
                        line.request().sowingId(), spot, line.offer().warm(), light.spot(), visitor.memberId());
                placed++;
            } catch (SpaceClash clash) {
                clashes.add(line.history().sowing().title() + ": " + clash.sentence(visitor.units()));
            }
        }
        String told = placed == 0 ? "Nothing was placed." : "%d placed as suggested.".formatted(placed);
        Respond.seeOther(ctx, "/requests", clashes.isEmpty() ? told : told + " " + String.join(" ", clashes));
    }

    private void one(Context ctx) {
        History history = history(ctx);
        ctx.render("placing/request.peb", model(ctx, history, new FormReader(Map.of()), new FormReader(Map.of())));
    }

    private void place(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        History history = history(ctx);
        SpaceRequest request = request(history);
        PlacementForm form = new PlacementForm(
                ctx.formParamMap(), request, board(visitor.today()), visitor.today(), visitor.units());
        Optional<PlacementForm.Placement> placement =
                form.placement(planner.daysAt(Asking.of(history.sowing()), visitor.today(), request.days()));
        if (placement.isEmpty()) {
            Respond.again(ctx, "placing/request.peb", model(ctx, history, form.reader(), new FormReader(Map.of())));
            return;
        }
        LightAfterHeat.Found light =
                lights.after(history.sowing(), request, placement.get().spot().to(), visitor.today());
        try {
            placements.place(
                    request.sowingId(),
                    placement.get().spot(),
                    placement.get().warm(),
                    light.spot(),
                    visitor.memberId());
        } catch (SpaceClash clash) {
            form.reader().refuse("place", clash.sentence(visitor.units()));
            ctx.status(HttpStatus.CONFLICT)
                    .render("placing/request.peb", model(ctx, history, form.reader(), new FormReader(Map.of())));
            return;
        }
        Respond.seeOther(
                ctx,
                "/requests",
                "%s lies on mat %s from %s. %s"
                        .formatted(
                                history.sowing().title(),
                                placement.get().mat().name(),
                                DayWords.day(placement.get().spot().from()),
                                light.words())
                        .strip());
    }

    private void refuse(Context ctx) {
        History history = history(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        String reason = form.requiredText("reason", "The reason", 400);
        if (!form.ok()) {
            Respond.again(ctx, "placing/request.peb", model(ctx, history, new FormReader(Map.of()), form));
            return;
        }
        decided(() ->
                placements.refuse(history.sowing().id(), reason, Visitor.of(ctx).memberId()));
        Respond.seeOther(
                ctx,
                "/requests",
                "Refused, and %s sees the reason."
                        .formatted(history.sowing().grower().name()));
    }

    private void takeBack(Context ctx) {
        History history = history(ctx);
        String seed = decided(
                () -> placements.takeBack(history.sowing().id(), Visitor.of(ctx).memberId()));
        Respond.seeOther(
                ctx,
                "/requests",
                "%s waits again. %s".formatted(history.sowing().title(), seed).strip());
    }

    private static void decided(Runnable decision) {
        decided(() -> {
            decision.run();
            return "";
        });
    }

    private static String decided(Supplier<String> decision) {
        try {
            return decision.get();
        } catch (SpaceClash clash) {
            throw Refusal.of(HttpStatus.CONFLICT, clash.sentence(Units.METRIC));
        }
    }

    private History history(Context ctx) {
        return histories
                .find(Respond.id(ctx, "id"))
                .filter(history -> history.request() != null)
                .orElseThrow(Refusal::notFound);
    }

    private static SpaceRequest request(History history) {
        return java.util.Objects.requireNonNull(history.request());
    }

    private Map<String, Object> model(Context ctx, History history, FormReader form, FormReader refusal) {
        Visitor visitor = Visitor.of(ctx);
        SpaceRequest request = request(history);
        SpaceCalendar board = board(visitor.today());
        FirstFit firstFit = new FirstFit(board, visitor.today());
        SpaceWish wish = wish(history, request, visitor.today());
        Map<String, Object> model = new HashMap<>();
        model.put("history", history);
        model.put("sowing", history.sowing());
        model.put("request", request);
        model.put("offers", request.isWaiting() ? firstFit.offers(wish, OFFERS) : List.of());
        model.put(
                "noSpace",
                firstFit.answer(wish) instanceof SpaceAnswer.None none
                        ? AskPlanner.sentence(none.reason(), visitor.units())
                        : "");
        model.put("form", form);
        model.put("refusal", refusal);
        model.put("places", places(board.mats(), visitor));
        model.put(
                "slots",
                Slot.of(request.quarters()).stream()
                        .map(slot -> new Choice(String.valueOf(slot.firstQuarter()), slot.words()))
                        .toList());
        return model;
    }

    private static List<Choice> places(List<MatSpace> mats, Visitor visitor) {
        List<Choice> places = new ArrayList<>();
        for (MatSpace mat : mats) {
            for (int number = 1; number <= mat.places().size(); number++) {
                places.add(new Choice(
                        mat.places().get(number - 1).toString(),
                        "%s, place %d · %s · holds %s"
                                .formatted(
                                        mat.name(),
                                        number,
                                        mat.where(),
                                        mat.thermostat().words(visitor.units()))));
            }
        }
        return places;
    }
}
