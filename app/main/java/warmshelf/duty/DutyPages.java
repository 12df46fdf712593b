package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Decision;
import warmshelf.web.Aside;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SiteRight;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** The rota: who looks on which day at which site. Everyone reads it, coordinators write it and set each site's hour. */
public final class DutyPages implements Pages {
    private static final String TEMPLATE = "duty/show.peb";
    private static final int DAYS_SHOWN = 14;
    private static final int MOST_DAYS_OFF = 800;

    private final DutyStore duties;
    private final StandInStore standIns;
    private final SiteRuleStore rules;
    private final SwapReadStore swaps;
    private final Aside news;

    DutyPages(DutyStore duties, StandInStore standIns, SiteRuleStore rules, SwapReadStore swaps, Aside news) {
        this.duties = duties;
        this.standIns = standIns;
        this.rules = rules;
        this.swaps = swaps;
        this.news = news;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/duty", this::show, Role.MEMBER);
        routes.post("/duty", this::write, Role.SITE_COORDINATOR);
        routes.post("/duty/hours", this::keepHours, Role.SITE_COORDINATOR);
    }

    private void show(Context ctx) {
        DutyPage page = page(ctx, from(ctx, ctx.queryParam("from")), new FormReader(Map.of()));
        Respond.page(ctx, TEMPLATE, page, news.model(Visitor.of(ctx)));
    }

    private DutyPage page(Context ctx, LocalDate from, FormReader form) {
        Visitor visitor = Visitor.of(ctx);
        LocalDate until = from.plusDays(DAYS_SHOWN);
        Set<UUID> inUse = ids(duties.sitesInUse(from));
        List<SiteRule> siteRules = rules.all().stream()
                .filter(rule -> inUse.contains(rule.site().id()))
                .toList();
        RotaPage.Source source = new RotaPage.Source(
                siteRules.stream().map(SiteRule::site).toList(),
                duties.rota(from, until),
                standIns.between(from, until),
                swaps.since(visitor.today()),
                form.typed());
        return new DutyPage(
                RotaPage.of(from, DAYS_SHOWN, source, visitor.memberId(), visitor.today()),
                source.sites(),
                HoursForm.lines(siteRules, form),
                duties.members(),
                form,
                from,
                from.minusDays(DAYS_SHOWN),
                until);
    }

    private static LocalDate from(Context ctx, @Nullable String asked) {
        LocalDate today = Visitor.of(ctx).today();
        if (asked == null) {
            return today;
        }
        try {
            LocalDate from = LocalDate.parse(asked);
            if (Math.abs(from.toEpochDay() - today.toEpochDay()) <= MOST_DAYS_OFF) {
                return from;
            }
        } catch (DateTimeParseException notADate) {
            // the sentence below names it
        }
        throw Refusal.of(HttpStatus.BAD_REQUEST, SAY.noSuchFirstDay(asked.length() > 40 ? "…" : asked, today));
    }

    private void write(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LocalDate today = visitor.today();
        LocalDate from = from(ctx, ctx.formParam("from"));
        FormReader form = new FormReader(ctx.formParamMap());
        List<DutyStore.Change> changes = new RotaForm(
                        ids(duties.sitesInUse(today)),
                        ids(duties.members()),
                        duties.rota(today.minusDays(MOST_DAYS_OFF), today.plusDays(MOST_DAYS_OFF)),
                        today,
                        form)
                .changes();
        SiteRight.require(
                visitor, changes.stream().map(change -> change.turn().site()).toList());
        int written = form.ok() ? write(changes, form, visitor) : 0;
        if (form.ok()) {
            Respond.seeOther(ctx, "/duty?from=" + from, written == 0 ? SAY.nothingChanged() : SAY.rotaKept());
        } else {
            Respond.again(ctx, TEMPLATE, page(ctx, from, form), news.model(visitor));
        }
    }

    /** How many turns were written; none where somebody was first, and then the form says at which. */
    private int write(List<DutyStore.Change> changes, FormReader form, Visitor visitor) {
        Decision<Integer> decision = duties.write(changes, visitor.today(), visitor.memberId());
        if (decision instanceof Decision.Overtaken<Integer> no && no.reason() instanceof RotaOvertaken overtaken) {
            overtaken.turns().forEach(turn -> form.refuse(RotaForm.DUTY + turn.words(), RotaOvertaken.words(turn)));
            return 0;
        }
        return Decisions.doneOr(decision, visitor.units());
    }

    private void keepHours(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        List<SiteRule> given = HoursForm.read(form, rules.all());
        SiteRight.require(visitor, given.stream().map(rule -> rule.site().id()).toList());
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, visitor.today(), form), news.model(visitor));
            return;
        }
        int kept = rules.keep(given, visitor.today(), visitor.memberId());
        Respond.seeOther(ctx, "/duty", kept == 0 ? SAY.nothingChanged() : SAY.hoursKept());
    }

    static Set<UUID> ids(List<Named> named) {
        return named.stream().map(Named::id).collect(Collectors.toSet());
    }
}
