package warmshelf.placing;

import static warmshelf.finding.trial.TrialWarnings.NONE;
import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.SpaceAnswer;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.decision.Decision;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.finding.trial.TrialWarnings;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.SeedAgain;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** One request: where it could lie, and the decision on it. */
public final class RequestPages implements Pages {
    private static final String TEMPLATE = "placing/request.peb";
    private static final int OFFERS = 6;

    private final HistoryStore histories;
    private final RequestWishes wishes;
    private final PlacementStore placements;
    private final LightAfterHeat lights;
    private final TrialWarmthStore trials;
    private final PlacementView places;

    RequestPages(
            HistoryStore histories,
            RequestWishes wishes,
            PlacementStore placements,
            LightAfterHeat lights,
            TrialWarmthStore trials,
            PlacementView places) {
        this.histories = histories;
        this.wishes = wishes;
        this.placements = placements;
        this.lights = lights;
        this.trials = trials;
        this.places = places;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/requests/{id}", this::one, Role.SITE_COORDINATOR);
        routes.post("/requests/{id}/placement", this::place, Role.SITE_COORDINATOR);
        routes.post("/requests/{id}/refusal", this::refuse, Role.SITE_COORDINATOR);
        routes.post("/requests/{id}/return", this::takeBack, Role.SITE_COORDINATOR);
    }

    private void one(Context ctx) {
        History history = history(ctx);
        Respond.page(ctx, TEMPLATE, page(ctx, history, new FormReader(Map.of()), new FormReader(Map.of()), NONE));
    }

    private void place(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        History history = history(ctx);
        SpaceRequest request = request(history);
        PlacementForm form = places.form(ctx.formParamMap(), request, visitor);
        Optional<PlacementForm.Placement> placement = form.placement(wishes.daysAt(history, request, visitor.today()));
        if (placement.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(ctx, history, form.reader(), new FormReader(Map.of()), NONE));
            return;
        }
        TrialWarnings warnings =
                trials.warnings(history.sowing(), placement.get().warm());
        if (!warnings.wereShownIn(form.reader())) {
            Respond.again(ctx, TEMPLATE, page(ctx, history, form.reader(), new FormReader(Map.of()), warnings));
            return;
        }
        LightAfterHeat.Found light =
                lights.after(history.sowing(), request, placement.get().spot().to(), visitor.today(), visitor.reach());
        Decision<UUID> decision = placements.place(
                request.sowingId(),
                placement.get().spot(),
                placement.get().warm(),
                light.spot(),
                form.reader().ticked("lightOtherwise"),
                visitor.memberId());
        if (!(decision instanceof Decision.Done)) {
            form.reader().refuse("place", Decisions.words(decision, visitor.units()));
            Respond.overtaken(ctx, TEMPLATE, page(ctx, history, form.reader(), new FormReader(Map.of()), NONE));
            return;
        }
        String back = MoveForm.back(form.reader().text("back")).orElse("/requests");
        Notice.leaveUndo(
                ctx,
                "/requests/" + request.sowingId() + "/return?back=" + URLEncoder.encode(back, StandardCharsets.UTF_8));
        Respond.seeOther(
                ctx,
                back,
                SAY.placed(
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
            Respond.again(ctx, TEMPLATE, page(ctx, history, new FormReader(Map.of()), form, NONE));
            return;
        }
        Visitor visitor = Visitor.of(ctx);
        Decisions.doneOr(placements.refuse(history.sowing().id(), reason, visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, "/requests", SAY.refused(history.sowing().grower().name()));
    }

    private void takeBack(Context ctx) {
        History history = history(ctx);
        Visitor visitor = Visitor.of(ctx);
        SeedAgain seed =
                Decisions.doneOr(placements.takeBack(history.sowing().id(), visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx,
                MoveForm.back(Objects.requireNonNullElse(ctx.queryParam("back"), ""))
                        .orElse("/requests"),
                SAY.waitsAgain(history.sowing().title(), seed.words(visitor.units()))
                        .strip());
    }

    private History history(Context ctx) {
        return histories
                .find(Respond.id(ctx, "id"))
                .filter(history -> history.request() != null)
                .orElseThrow(Refusal::notFound);
    }

    private static SpaceRequest request(History history) {
        return Objects.requireNonNull(history.request());
    }

    private RequestPage page(Context ctx, History history, FormReader form, FormReader refusal, TrialWarnings warned) {
        Visitor visitor = Visitor.of(ctx);
        SpaceRequest request = request(history);
        SpaceCalendar board = wishes.board(visitor.today(), visitor.reach());
        FirstFit firstFit = new FirstFit(board, visitor.today());
        SpaceWish wish = wishes.of(history, request, visitor.today());
        return new RequestPage(
                history,
                history.sowing(),
                request,
                histories.decided(request.sowingId()).orElse(null),
                request.isWaiting() ? offered(history, firstFit.offers(wish, OFFERS), visitor.units()) : List.of(),
                firstFit.answer(wish) instanceof SpaceAnswer.None none
                        ? none.reason().words(visitor.units())
                        : "",
                request.isWaiting() ? wishes.held() : List.of(),
                form,
                refusal,
                warned.words(visitor.units()),
                warned.key(),
                MatPlaceChoices.of(board, visitor.units()),
                MatPlaceChoices.partsFor(request));
    }

    private List<RequestPage.Offered> offered(History history, List<SpaceOffer> offers, Units units) {
        return offers.stream()
                .map(offer -> {
                    TrialWarnings warnings = trials.warnings(history.sowing(), offer.warm());
                    return new RequestPage.Offered(offer, warnings.words(units), warnings.key());
                })
                // Those at its fellow's warmth first; the others keep their order.
                .sorted(Comparator.comparing(
                        (RequestPage.Offered offered) -> !offered.warnings().isEmpty()))
                .toList();
    }
}
