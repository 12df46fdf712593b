package warmshelf.placing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceClash;
import warmshelf.allocation.Stay;
import warmshelf.allocation.WarmDays;
import warmshelf.web.FormReader;
import warmshelf.web.Notice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** A stay's page, and moving it: first what would come of it, then the move. Members may look, coordinators move. */
public final class StayPages implements Pages {
    private final LyingStore lying;
    private final MoveStore moves;
    private final MoveReader reader;

    StayPages(LyingStore lying, MoveStore moves, MoveReader reader) {
        this.lying = lying;
        this.moves = moves;
        this.reader = reader;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/stays/{id}", this::show, Role.MEMBER);
        routes.get("/stays/{id}/move", this::compare, Role.COORDINATOR);
        routes.post("/stays/{id}/move", this::move, Role.COORDINATOR);
        routes.post("/stays/{id}/undo", this::undo, Role.COORDINATOR);
        routes.post("/stays/{id}/release", this::free, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        LyingStay stay = stay(ctx);
        ctx.render("placing/stay.peb", model(ctx, stay, new FormReader(Map.of()), new FormReader(Map.of())));
    }

    private void compare(Context ctx) {
        LyingStay stay = movable(ctx);
        MoveForm form = form(ctx.queryParamMap(), ctx, stay);
        Optional<MoveForm.Wish> wish = form.wish(lying.places());
        if (wish.isEmpty()) {
            refuseTyped(ctx, stay, form);
            return;
        }
        MoveOutlook outlook = reader.outlook(stay, wish.get(), Visitor.of(ctx).today());
        if (Respond.wantsJson(ctx)) {
            ctx.json(json(
                    stay,
                    outlook,
                    Visitor.of(ctx).units(),
                    booked(stay, outlook).isPresent()));
        } else {
            ctx.render("placing/move.peb", comparison(ctx, stay, form, outlook, null));
        }
    }

    private void refuseTyped(Context ctx, LyingStay stay, MoveForm form) {
        if (Respond.wantsJson(ctx)) {
            throw Refusal.of(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    String.join(" ", form.reader().problems().values()));
        }
        Respond.again(ctx, "placing/stay.peb", model(ctx, stay, form.reader(), new FormReader(Map.of())));
    }

    private static Map<String, Object> json(LyingStay stay, MoveOutlook outlook, Units units, boolean lightFollows) {
        return Map.of(
                "fits", outlook.fits(),
                "same", outlook.same(),
                "version", stay.stay().version(),
                "now",
                        words(
                                stay.stay().where(),
                                stay.stay().from(),
                                stay.stay().to(),
                                stay.warm(),
                                units),
                "then",
                        words(
                                        outlook.place().whereWith(outlook.spot().slot()),
                                        outlook.spot().from(),
                                        outlook.spot().to(),
                                        outlook.warm(),
                                        units)
                                + (lightFollows ? "; its place under the light follows where that room is free" : ""),
                "clashes", outlook.clashes(units),
                "key", outlook.key());
    }

    private static String words(String where, LocalDate from, LocalDate to, @Nullable WarmDays warm, Units units) {
        return "%s, %s%s".formatted(where, DayWords.span(from, to), warm == null ? "" : ", " + words(warm, units));
    }

    /** For example '26 °C, from Tue 9 Mar 28 °C'. */
    private static String words(WarmDays warm, Units units) {
        return warm.runs().stream()
                .map(run -> (run.from().equals(warm.from()) ? "" : "from " + DayWords.day(run.from()) + " ")
                        + units.temperature(run.celsius()))
                .collect(Collectors.joining(", "));
    }

    private void move(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LyingStay stay = stay(ctx);
        MoveForm form = form(ctx.formParamMap(), ctx, stay);
        Optional<MoveForm.Wish> wish = form.wish(lying.places());
        if (wish.isEmpty()) {
            refuseTyped(ctx, stay, form);
            return;
        }
        try {
            if (wish.get().move().version() != stay.stay().version() || stay.isOverBy(visitor.today())) {
                throw new Overtaken(
                        moves.whatChanged(stay.stay().id(), wish.get().move().version()));
            }
            MoveOutlook outlook = reader.outlook(stay, wish.get(), visitor.today());
            if (!outlook.fits()) {
                throw new SpaceClash(units -> String.join(" ", outlook.clashes(units)));
            }
            if (!form.isAsShown(outlook)) {
                throw new Overtaken(
                        "A mat was turned or a day has passed since you looked, so it would lie there on other"
                                + " days or at another warmth. Please look again.");
            }
            UUID moved = moves.move(stay, outlook.spot(), outlook.warm(), visitor.today(), visitor.memberId());
            leaveUndo(ctx, moved, form.back());
            Respond.seeOther(
                    ctx,
                    form.back().orElse("/stays/" + moved),
                    "%s of %s lies on %s, %s, from %s."
                            .formatted(
                                    stay.what(),
                                    stay.grower(),
                                    outlook.place().words(),
                                    outlook.spot().slot().words(),
                                    DayWords.day(outlook.spot().from())));
        } catch (SpaceClash clash) {
            showConflict(ctx, stay, clash.sentence(Visitor.of(ctx).units()));
        } catch (Overtaken changed) {
            showConflict(ctx, stay, changed.sentence());
        }
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
                .orElseThrow(() -> Refusal.conflict(sentence + " It is not there to be moved any more."));
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
            ctx.render("placing/stay.peb", model(ctx, now, form.reader(), new FormReader(Map.of())));
        } else {
            ctx.render(
                    "placing/move.peb", comparison(ctx, now, form, reader.outlook(now, wish.get(), today), sentence));
        }
    }

    private void undo(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LyingStay stay = stay(ctx);
        try {
            UUID back = moves.takeBack(stay, visitor.today(), visitor.memberId());
            Respond.seeOther(
                    ctx,
                    MoveForm.back(Objects.requireNonNullElse(ctx.queryParam("back"), ""))
                            .orElse("/stays/" + back),
                    "%s of %s is back where it was.".formatted(stay.what(), stay.grower()));
        } catch (SpaceClash clash) {
            throw Refusal.conflict(clash.sentence(Visitor.of(ctx).units()));
        } catch (Overtaken changed) {
            throw Refusal.conflict(changed.sentence());
        }
    }

    private void free(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LyingStay stay = movable(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        String reason = form.requiredText("reason", "The reason", 400);
        int version = form.wholeNumber("version", "The version", 1, Integer.MAX_VALUE);
        if (!form.ok()) {
            Respond.again(ctx, "placing/stay.peb", model(ctx, stay, new FormReader(Map.of()), form));
            return;
        }
        try {
            if (version != stay.stay().version()) {
                throw new Overtaken(moves.whatChanged(stay.stay().id(), version));
            }
            moves.free(stay, reason, visitor.today(), visitor.memberId());
        } catch (SpaceClash clash) {
            throw Refusal.conflict(clash.sentence(Visitor.of(ctx).units()));
        } catch (Overtaken changed) {
            form.refuse("reason", changed.sentence());
            ctx.status(HttpStatus.CONFLICT)
                    .render("placing/stay.peb", model(ctx, stay, new FormReader(Map.of()), form));
            return;
        }
        Respond.seeOther(
                ctx,
                MoveForm.back(form.text("back"))
                        .orElse("/sowings/" + stay.stay().sowingId()),
                "The place is free. %s sees the reason%s."
                        .formatted(stay.grower(), stay.stay().isOnMat() ? ", and the request waits again" : ""));
    }

    private LyingStay stay(Context ctx) {
        UUID id = Respond.id(ctx, "id");
        return lying.find(id).orElseThrow(() -> gone(id));
    }

    private Refusal gone(UUID id) {
        return moves.knows(id) ? Refusal.conflict(moves.whatChanged(id, 0)) : Refusal.notFound();
    }

    private LyingStay movable(Context ctx) {
        LyingStay stay = stay(ctx);
        if (stay.isOverBy(Visitor.of(ctx).today())) {
            throw Refusal.conflict("This stay ended on %s; what has ended stays as it was."
                    .formatted(DayWords.day(stay.stay().to())));
        }
        return stay;
    }

    private static MoveForm form(Map<String, List<String>> typed, Context ctx, LyingStay stay) {
        return new MoveForm(
                typed, stay, Visitor.of(ctx).today(), Visitor.of(ctx).units());
    }

    private Map<String, @Nullable Object> model(Context ctx, LyingStay stay, FormReader form, FormReader freeing) {
        Visitor visitor = Visitor.of(ctx);
        boolean over = stay.isOverBy(visitor.today());
        boolean mayMove = visitor.coordinator() && !over;
        Map<String, @Nullable Object> model = new HashMap<>();
        model.put("lying", stay);
        model.put("stay", stay.stay());
        model.put("over", over);
        model.put("goesOn", over ? moves.goesOnAs(stay.stay().id()).orElse(null) : null);
        model.put("mayMove", mayMove);
        model.put("begun", stay.isBegunBy(visitor.today()));
        model.put("mayTakeBack", mayMove && moves.mayTakeBack(stay, visitor.today(), visitor.memberId()));
        model.put("groups", mayMove ? reader.choices(stay, visitor.today()) : List.of());
        model.put("spot", form.text("spot").isEmpty() ? MoveForm.key(stay) : form.text("spot"));
        model.put("steps", steps(stay, MoveForm.key(stay), stay.stay().from(), visitor.today(), form.text("back")));
        model.put("form", form);
        model.put("freeing", freeing);
        model.put(
                "back",
                MoveForm.back(ctx.queryParam("back") == null ? form.text("back") : ctx.queryParam("back"))
                        .orElse(""));
        return model;
    }

    private Map<String, @Nullable Object> comparison(
            Context ctx, LyingStay stay, MoveForm form, MoveOutlook outlook, @Nullable String conflict) {
        LocalDate today = Visitor.of(ctx).today();
        String spot = MoveForm.key(outlook.spot().placeId(), outlook.spot().slot());
        Map<String, @Nullable Object> model = new HashMap<>();
        model.put("lying", stay);
        model.put("stay", stay.stay());
        model.put("begun", stay.isBegunBy(today));
        model.put("outlook", outlook);
        model.put("booked", booked(stay, outlook).orElse(null));
        model.put("conflict", conflict);
        model.put("spot", spot);
        model.put("groups", reader.choices(stay, today));
        model.put("form", form.reader());
        model.put(
                "steps",
                steps(stay, spot, outlook.spot().from(), today, form.reader().text("back")));
        model.put("back", form.back().orElse(""));
        return model;
    }

    /** The place under a light that was booked for another last day on the mat than it would have. */
    private Optional<Stay> booked(LyingStay stay, MoveOutlook outlook) {
        return lying.bookedAfter(stay)
                .filter(booked -> !booked.from().equals(outlook.spot().to()));
    }

    /** Moves by a day or a week as links: the address, and the words. */
    private static List<Choice> steps(LyingStay stay, String spot, LocalDate from, LocalDate today, String back) {
        List<Choice> steps = new ArrayList<>();
        if (stay.isBegunBy(today)) {
            return steps;
        }
        addStep(steps, stay.stay(), spot, from.minusWeeks(1), "A week earlier", today, back);
        addStep(steps, stay.stay(), spot, from.minusDays(1), "A day earlier", today, back);
        addStep(steps, stay.stay(), spot, from.plusDays(1), "A day later", today, back);
        addStep(steps, stay.stay(), spot, from.plusWeeks(1), "A week later", today, back);
        return steps;
    }

    private static void addStep(
            List<Choice> steps, Stay stay, String spot, LocalDate from, String words, LocalDate today, String back) {
        if (!from.isBefore(today)) {
            String kept = MoveForm.back(back)
                    .map(address -> "&back=" + URLEncoder.encode(address, StandardCharsets.UTF_8))
                    .orElse("");
            steps.add(new Choice("/stays/%s/move?spot=%s&from=%s%s".formatted(stay.id(), spot, from, kept), words));
        }
    }
}
