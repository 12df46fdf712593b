package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.allocation.MatDayStore;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.finding.trial.TrialWarnings;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** A mat's page: what lies on it, its set-points and its thermometer. Coordinators turn it. */
public final class SetPointPages implements Pages {
    private static final String TEMPLATE = "placing/mat.peb";

    private static final int READINGS_DAYS = 21;
    private static final int LONGEST_SPAN_DAYS = 200;

    private final SetPointStore setPoints;
    private final TrialWarmthStore trials;

    public SetPointPages(Database database, MatDayStore matDays) {
        this.setPoints = new SetPointStore(database, matDays);
        this.trials = new TrialWarmthStore(database);
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/mats/{id}", this::show, Role.MEMBER);
        routes.post("/mats/{id}/set-points", this::set, Role.SITE_COORDINATOR);
    }

    private void show(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(ctx, mat(ctx), new FormReader(Map.of()), TrialWarnings.NONE));
    }

    private SetPointStore.MatFacts mat(Context ctx) {
        return setPoints.mat(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private MatPage page(Context ctx, SetPointStore.MatFacts mat, FormReader form, TrialWarnings warned) {
        LocalDate today = Visitor.of(ctx).today();
        return new MatPage(
                mat,
                setPoints.spans(mat.id(), today),
                setPoints.lying(mat.id(), today),
                setPoints.readings(mat.id(), today.minusDays(READINGS_DAYS)),
                form,
                warned.words(Visitor.of(ctx).units()),
                warned.key());
    }

    /**
     * A mat: its set-points from today on, what lies on it, and what its thermometer showed lately.
     *
     * @param warnings what turning it as typed would do to trials, or empty
     * @param warned says in the form that these were shown
     */
    private record MatPage(
            SetPointStore.MatFacts mat,
            List<SetPointStore.Span> spans,
            List<SetPointStore.Lying> lying,
            List<SetPointStore.Reading> readings,
            FormReader form,
            List<String> warnings,
            String warned) {}

    private void set(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        SetPointStore.MatFacts mat = mat(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        LocalDate first = form.date("first", SAY.firstDayField());
        LocalDate last = form.date("last", SAY.lastDayField());
        double celsius = SetPointForm.celsius(form, visitor.units());
        if (form.ok()) {
            refuseOddDays(form, first, last, visitor.today());
        }
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, mat, form, TrialWarnings.NONE));
            return;
        }
        TrialWarnings warnings = new TrialWarnings(trials.turned(mat.id(), first, last, celsius));
        if (!warnings.wereShownIn(form)) {
            Respond.again(ctx, TEMPLATE, page(ctx, mat, form, warnings));
            return;
        }
        set(ctx, mat, form, first, last, celsius);
    }

    private void set(
            Context ctx, SetPointStore.MatFacts mat, FormReader form, LocalDate first, LocalDate last, double celsius) {
        UUID by = Visitor.of(ctx).memberId();
        Units units = Visitor.of(ctx).units();
        Decision<UUID> decision = setPoints.set(mat.id(), first, last, celsius, by);
        if (!(decision instanceof Decision.Done)) {
            form.refuse("celsius", Decisions.words(decision, units));
            Respond.overtaken(ctx, TEMPLATE, page(ctx, mat, form, TrialWarnings.NONE));
            return;
        }
        Respond.seeOther(
                ctx,
                "/mats/" + mat.id(),
                SAY.isSet(mat.name(), units.temperature(celsius), DayWords.day(first), DayWords.day(last)));
    }

    private static void refuseOddDays(FormReader form, LocalDate first, LocalDate last, LocalDate today) {
        if (last.isBefore(first)) {
            form.refuse("last", SAY.lastBeforeFirst(last, first));
        } else if (first.isBefore(today)) {
            form.refuse("first", SAY.firstDayPassed(first, today));
        } else if (ChronoUnit.DAYS.between(first, last) > LONGEST_SPAN_DAYS) {
            form.refuse("last", SAY.spanTooLong(first, last, LONGEST_SPAN_DAYS));
        }
    }
}
