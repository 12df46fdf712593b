package warmshelf.finding.trial;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.sowing.History;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** The trials, the page of each, and joining one. */
final class TrialPages implements Pages {
    private static final String TEMPLATE = "finding/trial/show.peb";

    private final Trials trials;
    private final TrialReportView report;

    TrialPages(Trials trials) {
        this.trials = trials;
        this.report = new TrialReportView(trials);
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/trials", this::all, Role.MEMBER);
        routes.get("/trials/{id}", this::one, Role.MEMBER);
        routes.post("/trials/{id}/blocks", this::join, Role.MEMBER);
    }

    /** One line of the list. */
    public record Line(Trial trial, String crop, TrialState state) {}

    private record ListPage(List<Line> now, List<Line> earlier) {}

    private void all(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<Trial> all = trials.book().all(visitor.zone());
        Map<UUID, History> histories = trials.histories(all);
        TrialPlanner planner = trials.planner(visitor.units());
        List<Line> lines = all.stream()
                .map(trial -> new Line(
                        trial,
                        planner.crop(trial.lot()).name(),
                        TrialReading.of(trial, histories, trials.lastDay(), visitor.today(), visitor.units())
                                .state()))
                .toList();
        Respond.page(
                ctx,
                "finding/trial/list.peb",
                new ListPage(ofSeason(lines, visitor, true), ofSeason(lines, visitor, false)));
    }

    private static List<Line> ofSeason(List<Line> lines, Visitor visitor, boolean now) {
        return lines.stream()
                .filter(line -> now == (line.trial().season() == visitor.season()))
                .toList();
    }

    private void one(Context ctx) {
        Trial trial = trial(ctx);
        FormReader form = new FormReader(Map.of("sowOn", List.of(report.usualDay(Visitor.of(ctx), trial))));
        Respond.page(ctx, TEMPLATE, report.page(Visitor.of(ctx), trial, form));
    }

    private void join(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Trial trial = trial(ctx);
        TrialVisitView visit = new TrialVisitView(trials, visitor);
        FormReader form = new FormReader(ctx.formParamMap());
        LocalDate sowOn = visit.sowOn(form, trial);
        report.reading(visitor, trial)
                .refusalToJoin(visitor.memberId(), visitor.season())
                .ifPresent(reason -> form.refuse("sowOn", reason.words(visitor.units())));
        if (form.ok()) {
            Decision<TrialStore.Joined> decision = trials.declaring()
                    .join(trial, visitor.season(), sowOn, visit.blockOf(trial, sowOn), visitor.memberId());
            if (decision instanceof Decision.Done<TrialStore.Joined> done) {
                Respond.seeOther(ctx, "/trials/" + trial.id(), said(done.value()));
                return;
            }
            decision.refusal().ifPresent(reason -> form.refuse("sowOn", reason.words(visitor.units())));
        }
        Respond.again(ctx, TEMPLATE, report.page(visitor, trial, form));
    }

    private static String said(TrialStore.Joined joined) {
        String seed = joined.owner() == null ? "" : " %s is asked for the seed.".formatted(joined.owner());
        return "You carry a block. It is drawn, and its places are asked for." + seed;
    }

    private Trial trial(Context ctx) {
        return trials.book().find(Respond.id(ctx, "id"), Visitor.of(ctx).zone()).orElseThrow(Refusal::notFound);
    }
}
