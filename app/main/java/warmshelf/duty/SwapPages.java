package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import warmshelf.decision.Decision;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Asking others to take a day, and answering. */
final class SwapPages implements Pages {
    private static final String ADDRESS = "/duty/swaps";
    private static final String FORM = "duty/swap-new.peb";
    private static final int DAYS_BACK = 30;
    private static final int DAYS_OFFERED = 60;

    private final DutyStore duties;
    private final SwapStore swaps;
    private final SwapReadStore reads;

    SwapPages(DutyStore duties, SwapStore swaps, SwapReadStore reads) {
        this.duties = duties;
        this.swaps = swaps;
        this.reads = reads;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::list, Role.MEMBER);
        routes.get("/duty/swaps/new", this::newSwap, Role.MEMBER);
        routes.post(ADDRESS, this::ask, Role.MEMBER);
        routes.post("/duty/swaps/{id}/taking", this::take, Role.MEMBER);
        routes.post("/duty/swaps/{id}/refusal", this::decline, Role.MEMBER);
        routes.post("/duty/swaps/{id}/withdrawal", this::withdraw, Role.MEMBER);
    }

    /** A swap as a list shows it. */
    public record Line(Swap swap, String state, boolean open) {}

    private void list(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LocalDate today = visitor.today();
        UUID me = visitor.memberId();
        List<Swap> all = reads.since(today.minusDays(DAYS_BACK));
        List<Swap> own =
                all.stream().filter(swap -> swap.askedBy().id().equals(me)).toList();
        List<Swap> others =
                all.stream().filter(swap -> !swap.askedBy().id().equals(me)).toList();
        Respond.page(
                ctx,
                "duty/swaps.peb",
                new ListPage(
                        all.stream().filter(swap -> swap.asks(me, today)).toList(),
                        lines(own, today),
                        visitor.coordinator() ? lines(others, today) : List.of()));
    }

    /**
     * The swaps there are.
     *
     * @param swapsAsked those that the visitor may answer
     * @param mine those that the visitor asks for
     * @param others everybody else's, for coordinators
     */
    private record ListPage(List<Swap> swapsAsked, List<Line> mine, List<Line> others) {}

    private static List<Line> lines(List<Swap> swaps, LocalDate today) {
        return swaps.stream()
                .map(swap -> new Line(swap, swap.stateWords(today), swap.isOpen(today)))
                .toList();
    }

    private void newSwap(Context ctx) {
        FormReader form = new FormReader(
                Map.of("whom", List.of("anyone"), "inReturn", List.of("none"), "turn", ctx.queryParams("turn")));
        Respond.page(ctx, FORM, page(ctx, form, ownTurn(ctx, form)));
    }

    /**
     * The form in which a swap is asked for.
     *
     * @param turn the day to be given, as forms send it; {@code turnWords} as people read it
     * @param days what can be asked for in exchange
     */
    private record AskPage(FormReader form, String turn, String turnWords, List<Choice> whom, List<Choice> days) {}

    private AskPage page(Context ctx, FormReader form, Turn turn) {
        Visitor visitor = Visitor.of(ctx);
        Map<UUID, String> sites = siteNames();
        List<Choice> whom = new ArrayList<>(List.of(new Choice("anyone", SAY.anyone())));
        duties.members().stream()
                .filter(member -> !member.id().equals(visitor.memberId()))
                .forEach(member -> whom.add(new Choice(member.id().toString(), member.name())));
        List<Choice> days = new ArrayList<>(List.of(new Choice("none", SAY.nothingInReturn())));
        duties.rota(visitor.today(), visitor.today().plusDays(DAYS_OFFERED)).entrySet().stream()
                .filter(each -> !each.getValue().left() && !each.getValue().id().equals(visitor.memberId()))
                .sorted(Comparator.comparing(each -> each.getKey().day()))
                .forEach(each -> days.add(new Choice(
                        each.getKey().words(),
                        "%s (%s)"
                                .formatted(
                                        Swap.at(
                                                each.getKey(),
                                                sites.getOrDefault(each.getKey().site(), "")),
                                        each.getValue().name()))));
        return new AskPage(form, turn.words(), Swap.at(turn, sites.getOrDefault(turn.site(), "")), whom, days);
    }

    private Map<UUID, String> siteNames() {
        return duties.sites().stream().collect(Collectors.toMap(Named::id, Named::name));
    }

    /** The day the form is about; without one there is no form. */
    private Turn ownTurn(Context ctx, FormReader form) {
        Visitor visitor = Visitor.of(ctx);
        try {
            Turn turn = Turn.parse(form.text("turn"));
            DutyStore.Holder holder =
                    duties.rota(turn.day(), turn.day().plusDays(1)).get(turn);
            if (holder != null && holder.id().equals(visitor.memberId())) {
                if (turn.day().isBefore(visitor.today())) {
                    throw Refusal.conflict(SAY.ownDayPast());
                }
                return turn;
            }
        } catch (IllegalArgumentException malformed) {
            // the sentence below covers it
        }
        throw Refusal.notFound(SAY.noSuchDay());
    }

    private void ask(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        Turn turn = ownTurn(ctx, form);
        AskPage page = page(ctx, form, turn);
        Optional<SwapForm.Asking> asking = SwapForm.read(form, duties.members());
        if (asking.isPresent()) {
            Decision<UUID> decision = swaps.ask(
                    turn, asking.get().askedOf(), asking.get().inReturn(), visitor.today(), visitor.memberId());
            if (decision instanceof Decision.Done) {
                Respond.seeOther(ctx, ADDRESS, SAY.asked());
                return;
            }
            form.refuse("inReturn", Decisions.words(decision, visitor.units()));
        }
        Respond.again(ctx, FORM, page);
    }

    private void take(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Decision<Swap> decision = swaps.take(Respond.id(ctx, "id"), visitor.today(), visitor.memberId());
        answer(ctx, decision, swap -> SAY.taken(swap.words()));
    }

    private void decline(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Decision<Swap> decision = swaps.decline(Respond.id(ctx, "id"), visitor.today(), visitor.memberId());
        answer(ctx, decision, swap -> SAY.declined(swap.askedBy().name()));
    }

    private void withdraw(Context ctx) {
        Decision<Swap> decision =
                swaps.withdraw(Respond.id(ctx, "id"), Visitor.of(ctx).memberId());
        answer(ctx, decision, swap -> SAY.asksNoMore(swap.words()));
    }

    private static void answer(Context ctx, Decision<Swap> decision, Function<Swap, String> notice) {
        if (decision instanceof Decision.Missing) {
            throw Refusal.notFound(SAY.noSuchSwap());
        }
        Swap swap = Decisions.doneOr(decision, Visitor.of(ctx).units());
        String then = Objects.requireNonNullElse(ctx.formParam("then"), "");
        Respond.seeOther(ctx, List.of("/today", "/duty").contains(then) ? then : ADDRESS, notice.apply(swap));
    }
}
