package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SiteRight;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** Proposes who looks on the days that are empty; a press keeps what was shown. */
final class ProposalPages implements Pages {
    private static final String ADDRESS = "/duty/proposal";
    private static final String TEMPLATE = "duty/proposal.peb";
    private static final int NAMED_AT_MOST = 5;
    private static final ProposalPage NOTHING = new ProposalPage(List.of(), List.of(), 0, List.of());

    private final DutyStore duties;
    private final RotaBookStore books;

    ProposalPages(DutyStore duties, RotaBookStore books) {
        this.duties = duties;
        this.books = books;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.SITE_COORDINATOR);
        routes.post(ADDRESS, this::keep, Role.SITE_COORDINATOR);
    }

    private void show(Context ctx) {
        LocalDate today = Visitor.of(ctx).today();
        List<Named> sites = theirs(Visitor.of(ctx));
        Map<String, List<String>> asked = new HashMap<>(ProposalForm.usual(today));
        asked.putAll(ctx.queryParamMap());
        FormReader form = new FormReader(asked);
        Optional<ProposalForm.Span> span = ProposalForm.read(form, sites, today);
        if (span.isEmpty()) {
            Respond.again(ctx, TEMPLATE, FormPage.of(form, sites, NOTHING));
            return;
        }
        Respond.page(ctx, TEMPLATE, FormPage.of(form, sites, page(span.get(), today)));
    }

    private List<Named> theirs(Visitor visitor) {
        return duties.sitesInUse(visitor.today()).stream()
                .filter(site -> visitor.reach().covers(site.id()))
                .toList();
    }

    /**
     * The form, and what is proposed.
     *
     * @param siteChoices the sites with 'all' before them
     * @param mostDays how many days are proposed for at once
     */
    private record FormPage(
            FormReader form, List<Named> sites, List<Choice> siteChoices, int mostDays, ProposalPage page) {
        static FormPage of(FormReader form, List<Named> sites, ProposalPage page) {
            List<Choice> choices = new ArrayList<>(List.of(new Choice("all", SAY.allSites())));
            sites.forEach(site -> choices.add(new Choice(site.id().toString(), site.name())));
            return new FormPage(form, sites, choices, ProposalForm.MOST_DAYS, page);
        }
    }

    private ProposalPage page(ProposalForm.Span span, LocalDate today) {
        RotaBook book = books.read(today);
        List<Turn> empty =
                span.turns().stream().filter(turn -> !book.isFilled(turn)).toList();
        return ProposalPage.of(span, duties.rota(span.from(), span.until()), FairRota.propose(empty, book), book);
    }

    private void keep(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LocalDate today = visitor.today();
        List<Named> sites = theirs(visitor);
        FormReader form = new FormReader(ctx.formParamMap());
        // what the page showed as empty is compared with what stands by now by the store, so none is known here
        Map<Turn, UUID> proposed = new RotaForm(
                        DutyPages.ids(duties.sitesInUse(today)), DutyPages.ids(duties.members()), Map.of(), today, form)
                .proposed();
        SiteRight.require(visitor, proposed.keySet().stream().map(Turn::site).toList());
        if (!form.ok()) {
            Map<String, List<String>> usual = ProposalForm.usual(today);
            FormReader again = new FormReader(usual);
            form.problems().forEach(again::refuse);
            Respond.again(ctx, TEMPLATE, FormPage.of(again, sites, NOTHING));
            return;
        }
        DutyStore.Filled filled = duties.fill(proposed, today, visitor.memberId());
        Respond.seeOther(ctx, "/duty", notice(filled));
    }

    private static String notice(DutyStore.Filled filled) {
        String kept = SAY.daysKept(filled.lines());
        List<Turn> left = filled.left();
        if (left.isEmpty()) {
            return kept;
        }
        String days = String.join(
                ", ",
                left.stream()
                        .limit(NAMED_AT_MOST)
                        .map(turn -> DayWords.day(turn.day()))
                        .toList());
        return kept + " " + (left.size() > NAMED_AT_MOST ? SAY.leftAsTheyAreAndMore(days) : SAY.leftAsTheyAre(days));
    }
}
