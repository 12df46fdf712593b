package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Choosing another lot for a sowing that has no seed, or too little. */
public final class SeedChoicePages implements Pages {
    private static final String TEMPLATE = "sowing/lot.peb";

    /** What a tray has where nobody said: the usual one of the asking page. */
    private static final int USUAL_CELLS = 72;

    private final SowingStores stores;

    SeedChoicePages(SowingStores stores) {
        this.stores = stores;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings/{id}/lot", this::form, Role.MEMBER);
        routes.post("/sowings/{id}/lot", this::choose, Role.MEMBER);
    }

    private void form(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(changeable(ctx), new FormReader(ctx.queryParamMap())));
    }

    private void choose(Context ctx) {
        Sowing sowing = changeable(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        Optional<LotBalance> chosen = balances(sowing).stream()
                .filter(each -> each.lot().id().toString().equals(form.text("lot")))
                .findFirst();
        if (chosen.isEmpty()) {
            form.refuse("lot", SAY.noLotChosen());
        }
        Decision<SeedClaimStore.Held> decision = chosen.flatMap(balance -> choice(sowing)
                        .seeds(
                                form,
                                balance,
                                stores.use().evidence(stores.lots(), balance.lot()),
                                Visitor.of(ctx).units())
                        .map(seeds -> stores.claims()
                                .choose(
                                        sowing.id(),
                                        balance.lot(),
                                        seeds,
                                        Visitor.of(ctx).memberId())))
                .orElse(null);
        if (decision instanceof Decision.Refused<SeedClaimStore.Held> few) {
            form.refuse("lot", few.reason().words(Visitor.of(ctx).units()));
        }
        if (decision == null || !form.ok()) {
            Respond.again(ctx, TEMPLATE, page(sowing, form));
            return;
        }
        Respond.seeOther(
                ctx,
                "/sowings/" + sowing.id(),
                said(Decisions.doneOr(decision, Visitor.of(ctx).units())));
    }

    private static String said(SeedClaimStore.Held held) {
        SeedClaimStore.Owner asked = held.asked();
        return asked == null ? SAY.seedFromThisLot() : SAY.ownerIsAsked(asked.name());
    }

    private Sowing changeable(Context ctx) {
        Sowing sowing = stores.sowings().find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Visitor visitor = Visitor.of(ctx);
        if (!visitor.coordinator() && !visitor.memberId().equals(sowing.grower().memberId())) {
            throw Refusal.forbidden(SAY.onlyGrowerChooses(sowing.grower().name()));
        }
        if (!sowing.stage().isBeforeSowing()) {
            throw Refusal.conflict(SAY.sownAlready());
        }
        return sowing;
    }

    /** The lots it can be sown from, as they are without what it holds itself; what was asked for is not asked for again. */
    private List<LotBalance> balances(Sowing sowing) {
        List<Lot> box = stores.lots().withSeed();
        Map<UUID, LotBalance> all = stores.balances().of(box);
        SeedChoice choice = choice(sowing);
        Optional<UUID> asked = stores.lotRequests().find(sowing.id()).map(LotRequest::lotId);
        return box.stream()
                .filter(lot -> !asked.equals(Optional.of(lot.id())))
                .map(lot -> Objects.requireNonNull(all.get(lot.id())).without(sowing.id()))
                .filter(choice::isPossible)
                .toList();
    }

    private SeedChoice choice(Sowing sowing) {
        return new SeedChoice(
                sowing,
                stores.sowings().cellsInTray(sowing.id()).orElse(USUAL_CELLS),
                stores.use().survival(sowing.season()));
    }

    /** A sowing, and the lots that its seed can be from. */
    private record SeedChoicePage(Sowing sowing, List<Choice> lots, FormReader form) {}

    private SeedChoicePage page(Sowing sowing, FormReader form) {
        UUID grower = sowing.grower().memberId();
        List<Choice> lots = balances(sowing).stream()
                .map(balance -> new Choice(balance.lot().id().toString(), words(balance, grower)))
                .toList();
        return new SeedChoicePage(sowing, lots, form);
    }

    private static String words(LotBalance balance, UUID grower) {
        Lot lot = balance.lot();
        return "%s %d (%s)".formatted(lot.variety(), lot.seedYear(), new BalanceWords(balance).whoseAndFree(grower));
    }
}
