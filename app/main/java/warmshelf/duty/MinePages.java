package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** When somebody can look and when not, and the days they have. Coordinators may enter it for others. */
final class MinePages implements Pages {
    private static final String ADDRESS = "/duty/mine";
    private static final String TEMPLATE = "duty/mine.peb";
    private static final int DAYS_AHEAD = 400;

    private final DutyStore duties;
    private final StandInStore standIns;
    private final WillingStore willing;
    private final SwapReadStore swaps;

    MinePages(DutyStore duties, StandInStore standIns, WillingStore willing, SwapReadStore swaps) {
        this.duties = duties;
        this.standIns = standIns;
        this.willing = willing;
        this.swaps = swaps;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.post(ADDRESS, this::keepWeekdays, Role.MEMBER);
        routes.post("/duty/mine/away", this::addAway, Role.MEMBER);
        routes.post("/duty/mine/away/{id}/removal", this::removeAway, Role.MEMBER);
    }

    /** A day that somebody has, for example 'Thu 4 Mar at Hall cellar', and whether others are asked to take it. */
    public record OwnTurn(String turn, String words, boolean asked) {}

    private void show(Context ctx) {
        Named whose = whose(ctx, ctx.queryParam("member"));
        Respond.page(ctx, TEMPLATE, page(ctx, whose, willing.of(whose.id()), new FormReader(Map.of())));
    }

    private MinePage page(Context ctx, Named whose, Set<SiteWeekday> can, FormReader form) {
        Visitor visitor = Visitor.of(ctx);
        LocalDate today = visitor.today();
        List<Named> sites = duties.sites();
        return new MinePage(
                whose,
                whose.id().equals(visitor.memberId()),
                visitor.coordinator() ? duties.members() : List.of(),
                WillingForm.lines(duties.sitesInUse(today), can),
                willing.away(whose.id(), today),
                turns(whose.id(), sites, today),
                standing(whose.id(), sites, today),
                form);
    }

    private List<OwnTurn> turns(UUID member, List<Named> sites, LocalDate today) {
        Map<Turn, DutyStore.Holder> rota = duties.rota(today, today.plusDays(DAYS_AHEAD));
        rota.values().removeIf(holder -> !holder.id().equals(member));
        return inOrder(rota.keySet(), sites, today);
    }

    private List<OwnTurn> standing(UUID member, List<Named> sites, LocalDate today) {
        Map<Turn, Named> standing = standIns.between(today, today.plusDays(DAYS_AHEAD));
        standing.values().removeIf(named -> !named.id().equals(member));
        return inOrder(standing.keySet(), sites, today);
    }

    private List<OwnTurn> inOrder(Set<Turn> turns, List<Named> sites, LocalDate today) {
        Set<Turn> asked = swaps.since(today).stream()
                .filter(swap -> swap.isOpen(today))
                .map(Swap::turn)
                .collect(Collectors.toSet());
        return turns.stream()
                .sorted(Comparator.comparing(Turn::day).thenComparing(turn -> siteName(sites, turn)))
                .map(turn -> new OwnTurn(turn.words(), Swap.at(turn, siteName(sites, turn)), asked.contains(turn)))
                .toList();
    }

    private static String siteName(List<Named> sites, Turn turn) {
        return sites.stream()
                .filter(site -> site.id().equals(turn.site()))
                .map(Named::name)
                .findFirst()
                .orElse("");
    }

    private void keepWeekdays(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Named whose = whose(ctx, ctx.formParam("member"));
        FormReader form = new FormReader(ctx.formParamMap());
        Optional<Set<SiteWeekday>> can = WillingForm.read(ctx.formParams("can"), duties.sites());
        if (can.isEmpty()) {
            form.refuse("can", SAY.noSuchTick());
            Respond.again(ctx, TEMPLATE, page(ctx, whose, willing.of(whose.id()), form));
            return;
        }
        willing.keep(whose.id(), can.get(), visitor.today(), visitor.memberId());
        Respond.seeOther(ctx, address(visitor, whose), can.get().isEmpty() ? SAY.notOnRota() : SAY.weekdaysKept());
    }

    private void addAway(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Named whose = whose(ctx, ctx.formParam("member"));
        FormReader form = new FormReader(ctx.formParamMap());
        Optional<AwayForm.Span> span = AwayForm.read(form, visitor.today());
        if (span.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(ctx, whose, willing.of(whose.id()), form));
            return;
        }
        LocalDate first = span.get().first();
        LocalDate last = span.get().last();
        willing.addAway(whose.id(), first, last, visitor.today(), visitor.memberId());
        long down = duties.rota(first, last.plusDays(1)).values().stream()
                .filter(holder -> holder.id().equals(whose.id()))
                .count();
        Respond.seeOther(
                ctx,
                address(visitor, whose),
                down == 0 ? awayWords(first, last) : awayWords(first, last) + " " + SAY.stillOnRota(down));
    }

    private static String awayWords(LocalDate first, LocalDate last) {
        return first.equals(last)
                ? SAY.awayOneDay(DayWords.day(first))
                : SAY.awayDays(DayWords.day(first), DayWords.day(last));
    }

    private void removeAway(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID away = Respond.id(ctx, "id");
        UUID owner = willing.ownerOfAway(away).orElseThrow(() -> Refusal.notFound(SAY.daysNotKept()));
        Named whose = whose(ctx, owner.toString());
        willing.removeAway(away, owner, visitor.today(), visitor.memberId());
        Respond.seeOther(ctx, address(visitor, whose), SAY.openAgain());
    }

    private static String address(Visitor visitor, Named whose) {
        return whose.id().equals(visitor.memberId()) ? ADDRESS : ADDRESS + "?member=" + whose.id();
    }

    /** The member named, who is the visitor or, for a coordinator, anybody in the group. */
    private Named whose(Context ctx, @Nullable String named) {
        Visitor visitor = Visitor.of(ctx);
        if (named == null || named.isBlank() || named.equals(visitor.memberId().toString())) {
            return new Named(visitor.memberId(), visitor.called());
        }
        if (!visitor.coordinator()) {
            throw Refusal.forbidden(SAY.onlyCoordinators());
        }
        return duties.members().stream()
                .filter(member -> member.id().toString().equals(named))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound(SAY.noSuchMember()));
    }
}
