package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.allocation.SpaceStore;
import warmshelf.decision.Decision;
import warmshelf.sowing.CompostStore;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.Problem;
import warmshelf.sowing.Sowing;
import warmshelf.tablet.TabletReachPages;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Ticking a check: from the round in one press, or on a page of its own with every field. */
public final class TickPages implements Pages {
    private static final String TEMPLATE = "check/tick.peb";

    private final HistoryStore histories;
    private final LightUntil lightUntil;
    private final TickStore ticks;
    private final SpaceStore space;
    private final CompostStore composts;
    private final TabletReachPages reach;
    private final Clock clock;

    TickPages(
            HistoryStore histories,
            LightUntil lightUntil,
            TickStore ticks,
            SpaceStore space,
            CompostStore composts,
            TabletReachPages reach,
            Clock clock) {
        this.histories = histories;
        this.lightUntil = lightUntil;
        this.ticks = ticks;
        this.space = space;
        this.composts = composts;
        this.reach = reach;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings/{id}/entry", this::form, Role.TABLET);
        routes.post("/sowings/{id}/entries", this::tick, Role.TABLET);
    }

    private void form(Context ctx) {
        Map<String, List<String>> typed = new HashMap<>(ctx.queryParamMap());
        typed.putIfAbsent("step", List.of("look"));
        History history = history(ctx);
        composts.of(history.sowing().id()).ifPresent(compost -> typed.putIfAbsent("compost", List.of(compost)));
        Respond.page(ctx, TEMPLATE, page(ctx, history, new FormReader(typed)));
    }

    private void tick(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Sowing sowing = histories.sowing(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        reach.needSowing(visitor, sowing.id());
        TickForm form = new TickForm(ctx.formParamMap(), sowing, visitor.today(), ids(visitor, sowing));
        Optional<Tick> tick = form.tick()
                .map(typed -> reach.looker(ctx, visitor).map(typed::seenBy).orElse(typed));
        if (tick.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(ctx, histories.of(sowing), form.reader()));
            return;
        }
        Decision<TickOutcome> decision = ticks.keep(
                sowing.id(),
                tick.get(),
                lightUntil.of(() -> histories.of(sowing), tick.get(), visitor.today()),
                visitor.memberId());
        if (decision instanceof Decision.Done<TickOutcome> done) {
            Respond.seeOther(ctx, then(ctx, sowing), notice(visitor, sowing, tick.get(), done.value()));
            return;
        }
        form.reader().refuse("step", Decisions.words(decision, visitor.units()));
        ctx.status(Decisions.status(decision));
        Respond.page(ctx, TEMPLATE, page(ctx, histories.of(sowing), form.reader()));
    }

    private EntryIds ids(Visitor visitor, Sowing sowing) {
        return new EntryIds(
                clock.instant(),
                visitor.zone(),
                (id, since) -> histories
                        .entry(id)
                        .filter(entry -> entry.sowingId().equals(sowing.id())
                                && !entry.seenAt().toInstant().isBefore(since))
                        .isPresent());
    }

    private static String notice(Visitor visitor, Sowing sowing, Tick tick, TickOutcome outcome) {
        if (!(outcome instanceof TickOutcome.Kept kept)) {
            return SAY.sameLook();
        }
        if (kept.again()) {
            return SAY.keptBefore();
        }
        return String.join(
                        " ",
                        SAY.kept(sowing.title(), tick.step().done()) + ofProblem(visitor, sowing, tick),
                        kept.remark(visitor.units()))
                .strip();
    }

    private static String ofProblem(Visitor visitor, Sowing sowing, Tick tick) {
        Problem problem = tick.problem();
        if (problem == null) {
            return "";
        }
        boolean own = visitor.memberId().equals(sowing.grower().memberId());
        String told = own ? "" : " " + SAY.toldOfIt(sowing.grower().name());
        String rack = problem.spreads() ? " " + SAY.rackIsTold() : "";
        return " " + problem.whatHelps() + told + rack;
    }

    /** Where to go on: only within this site. */
    private static String then(Context ctx, Sowing sowing) {
        String otherwise = Visitor.of(ctx).tablet() == null ? "/sowings/" + sowing.id() : "/today";
        return GoOn.to(new FormReader(ctx.formParamMap()).text("then"), otherwise);
    }

    private TickPage page(Context ctx, History history, FormReader form) {
        LocalDate today = Visitor.of(ctx).today();
        int quarters = history.sowing().quartersUnderLight();
        UUID lies = history.liesOn(today).orElse(null);
        return TickPage.of(
                history,
                form,
                today,
                space.litPlacesFrom(lies, today, today.plusDays(LightUntil.DAYS_AHEAD), quarters),
                space.holds(),
                composts.known());
    }

    private History history(Context ctx) {
        History history = histories.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        reach.needSowing(Visitor.of(ctx), history.sowing().id());
        return history;
    }
}
