package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceRefusal;
import warmshelf.decision.Decision;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.web.Decisions;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** Moving a stay: first what would come of it, then the move. */
public final class MovePages implements Pages {
    private static final String TEMPLATE = "placing/move.peb";

    private final LyingStore lying;
    private final MoveStore moves;
    private final MoveReader reader;
    private final StayView view;
    private final TrialWarmthStore trials;

    MovePages(LyingStore lying, MoveStore moves, MoveReader reader, StayView view, TrialWarmthStore trials) {
        this.lying = lying;
        this.moves = moves;
        this.reader = reader;
        this.view = view;
        this.trials = trials;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/stays/{id}/move", this::compare, Role.SITE_COORDINATOR);
        routes.post("/stays/{id}/move", this::move, Role.SITE_COORDINATOR);
    }

    private void compare(Context ctx) {
        LyingStay stay = view.movable(Respond.id(ctx, "id"), Visitor.of(ctx));
        MoveForm form = form(ctx.queryParamMap(), ctx, stay);
        Optional<MoveForm.Wish> wish = form.wish(lying.places());
        if (wish.isEmpty()) {
            refuseTyped(ctx, stay, form);
            return;
        }
        view.refuseElsewhere(wish.get().place().id(), Visitor.of(ctx));
        MoveOutlook outlook = reader.outlook(stay, wish.get(), Visitor.of(ctx).today());
        if (Respond.wantsJson(ctx)) {
            ctx.json(MoveAnswer.of(
                    stay,
                    outlook,
                    Visitor.of(ctx).units(),
                    reader.booked(stay, outlook).isPresent(),
                    warnings(ctx, stay, outlook)));
        } else {
            Respond.page(ctx, TEMPLATE, page(ctx, stay, form, outlook, null));
        }
    }

    private void refuseTyped(Context ctx, LyingStay stay, MoveForm form) {
        if (Respond.wantsJson(ctx)) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", form.reader().problems().values()));
        }
        Respond.again(
                ctx,
                StayPage.TEMPLATE,
                view.page(Visitor.of(ctx), stay, form.reader(), new FormReader(Map.of()), ctx.queryParam("back")));
    }

    private void move(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LyingStay stay = view.stay(Respond.id(ctx, "id"), Visitor.of(ctx));
        MoveForm form = form(ctx.formParamMap(), ctx, stay);
        Optional<MoveForm.Wish> wish = form.wish(lying.places());
        if (wish.isEmpty()) {
            refuseTyped(ctx, stay, form);
            return;
        }
        view.refuseElsewhere(wish.get().place().id(), visitor);
        int seen = wish.get().move().version();
        if (seen != stay.stay().version() || stay.isOverBy(visitor.today())) {
            showConflict(ctx, stay, moves.whatChanged(stay.stay().id(), seen).words(visitor.units()));
            return;
        }
        MoveOutlook outlook = reader.outlook(stay, wish.get(), visitor.today());
        Decision<UUID> decision = decide(visitor, stay, form, outlook);
        if (decision instanceof Decision.Done<UUID> moved) {
            leaveUndo(ctx, moved.value(), form.back());
            Respond.seeOther(
                    ctx,
                    form.back().orElse("/stays/" + moved.value()),
                    SAY.moved(
                            stay.what(),
                            stay.grower(),
                            outlook.place().words(),
                            outlook.spot().slot().words(),
                            DayWords.day(outlook.spot().from())));
        } else {
            showConflict(ctx, stay, Decisions.words(decision, visitor.units()));
        }
    }

    /** Moves it, if it would lie as was shown. */
    private Decision<UUID> decide(Visitor visitor, LyingStay stay, MoveForm form, MoveOutlook outlook) {
        if (!outlook.fits()) {
            return new Decision.Overtaken<>(new SpaceRefusal.InTheWay(outlook.obstacles()));
        }
        return form.isAsShown(outlook)
                ? moves.move(stay, outlook.spot(), outlook.warm(), visitor.today(), visitor.memberId())
                : new Decision.Overtaken<>(new PlacingRefusal.OtherThanShown());
    }

    private static void leaveUndo(Context ctx, UUID moved, Optional<String> back) {
        String query = back.map(address -> "?back=" + URLEncoder.encode(address, StandardCharsets.UTF_8))
                .orElse("");
        Notice.leaveUndo(ctx, "/stays/" + moved + "/undo" + query);
    }

    /** What changed, beside what was wished, judged anew; so nothing of theirs is lost and they may save it after all. */
    private void showConflict(Context ctx, LyingStay seen, String sentence) {
        LocalDate today = Visitor.of(ctx).today();
        UUID id = moves.goesOnAs(seen.stay().id()).orElse(seen.stay().id());
        LyingStay now = lying.find(id)
                .filter(stay -> !stay.isOverBy(today))
                .orElseThrow(() -> Refusal.conflict(sentence + " " + SAY.notThereToMove()));
        Map<String, List<String>> typed = new HashMap<>(ctx.formParamMap());
        typed.remove("version");
        typed.remove("shown");
        MoveForm form = form(typed, ctx, now);
        Optional<MoveForm.Wish> wish = form.wish(lying.places());
        ctx.status(HttpStatus.CONFLICT);
        if (Respond.wantsJson(ctx)) {
            ctx.json(Map.of("error", sentence));
        } else if (wish.isEmpty()) {
            form.reader().refuse("spot", sentence);
            Respond.page(
                    ctx,
                    StayPage.TEMPLATE,
                    view.page(Visitor.of(ctx), now, form.reader(), new FormReader(Map.of()), ctx.queryParam("back")));
        } else {
            Respond.page(ctx, TEMPLATE, page(ctx, now, form, reader.outlook(now, wish.get(), today), sentence));
        }
    }

    private static MoveForm form(Map<String, List<String>> typed, Context ctx, LyingStay stay) {
        return new MoveForm(
                typed, stay, Visitor.of(ctx).today(), Visitor.of(ctx).units());
    }

    private MovePage page(Context ctx, LyingStay stay, MoveForm form, MoveOutlook outlook, @Nullable String conflict) {
        LocalDate today = Visitor.of(ctx).today();
        String spot = MoveForm.key(outlook.spot().placeId(), outlook.spot().slot());
        return new MovePage(
                stay,
                stay.stay(),
                stay.isBegunBy(today),
                outlook,
                reader.booked(stay, outlook).orElse(null),
                conflict,
                warnings(ctx, stay, outlook),
                spot,
                reader.choices(stay, today, Visitor.of(ctx).reach()),
                form.reader(),
                StayView.steps(
                        stay, spot, outlook.spot().from(), today, form.reader().text("back")),
                form.back().orElse(""));
    }

    /** What it would do to a trial that it is of, in the visitor's units. */
    private List<String> warnings(Context ctx, LyingStay stay, MoveOutlook outlook) {
        return trials.apart(stay.stay().sowingId(), outlook.warm()).stream()
                .map(apart -> apart.words(Visitor.of(ctx).units()))
                .toList();
    }
}
