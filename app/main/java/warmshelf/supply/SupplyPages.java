package warmshelf.supply;

import static warmshelf.supply.SupplySentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStores;
import warmshelf.timeline.Caution;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Units;

/** The season's shopping list, and who brings what. */
public final class SupplyPages implements Pages {
    private static final String ADDRESS = "/supplies";
    private final HistoryStore histories;
    private final SowingPlanner planner;
    private final TrayStore trays;
    private final PromiseStore promises;

    public SupplyPages(SowingStores stores) {
        this.histories = stores.histories();
        this.planner = stores.planner();
        this.trays = new TrayStore(stores.database());
        this.promises = new PromiseStore(stores.database(), stores.audit());
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.post(ADDRESS, this::promise, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/brought", this::brought, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/not-brought", this::notBrought, Role.MEMBER);
        routes.get(ADDRESS + "/{id}/change", this::changeForm, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/change", this::change, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/taking-back", this::takeBack, Role.MEMBER);
    }

    private void show(Context ctx) {
        String item = ctx.queryParam("item");
        Respond.page(ctx, "supply/list.peb", page(ctx, PromiseForm.blank(item == null ? "" : item)));
    }

    private void promise(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        PromiseForm form = PromiseForm.of(ctx.formParamMap(), visitor.coordinator(), visitor.units());
        Optional<NewPromise> written = form.written();
        if (written.isEmpty()) {
            Respond.again(ctx, "supply/list.peb", page(ctx, form));
            return;
        }
        promises.add(id(ctx), visitor.season(), written.get(), visitor.memberId());
        Respond.seeOther(ctx, ADDRESS, written.get().there() ? SAY.noted() : SAY.thanks());
    }

    private static UUID id(Context ctx) {
        try {
            return UUID.fromString(String.valueOf(ctx.formParam("id")));
        } catch (IllegalArgumentException notSent) {
            return UUID.randomUUID();
        }
    }

    private void brought(Context ctx) {
        Promise promise = changeable(ctx);
        promises.bring(promise.id(), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, ADDRESS, SAY.isThere());
    }

    private void notBrought(Context ctx) {
        Promise promise = changeable(ctx);
        promises.unbring(promise.id(), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, ADDRESS, SAY.notThereYet());
    }

    private void changeForm(Context ctx) {
        Promise promise = changeable(ctx);
        Units units = Visitor.of(ctx).units();
        Respond.page(ctx, "supply/change.peb", new ChangePage(promise, AmountForm.showing(promise, units), units));
    }

    private void change(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Promise promise = changeable(ctx);
        AmountForm form = AmountForm.of(ctx.formParamMap(), promise.item(), visitor.units());
        if (form.written().isEmpty()) {
            Respond.again(ctx, "supply/change.peb", new ChangePage(promise, form, visitor.units()));
            return;
        }
        Decisions.doneOr(
                promises.change(promise.id(), form.read(), form.written().get(), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, ADDRESS, "Changed.");
    }

    private record ChangePage(Promise promise, AmountForm form, Units units) {}

    private void takeBack(Context ctx) {
        if (promises.isTakenBack(Respond.id(ctx, "id"))) {
            // Pressed twice, or by two at once: what was wanted is so.
            Respond.seeOther(ctx, ADDRESS, SAY.offTheListAlready());
            return;
        }
        Promise promise = changeable(ctx);
        promises.takeBack(promise.id(), Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, ADDRESS, SAY.takenOffTheList());
    }

    private Promise changeable(Context ctx) {
        Promise promise = promises.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Visitor visitor = Visitor.of(ctx);
        if (!promise.mayBeChangedBy(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(SAY.onlyWhoPromised());
        }
        return promise;
    }

    /** What is of an earlier season, or was meant for a day that has passed and never sown, needs nothing any more. */
    private static boolean isToBeServed(Sowing sowing, Visitor visitor) {
        LocalDate cover = sowing.underCoverOn();
        boolean missed = cover != null && cover.isBefore(visitor.today());
        return !sowing.isBefore(visitor.season()) && !(sowing.stage().isBeforeSowing() && missed);
    }

    private SupplyPage page(Context ctx, PromiseForm form) {
        Visitor visitor = Visitor.of(ctx);
        List<History> underWay = histories.underWay().stream()
                .filter(history -> isToBeServed(history.sowing(), visitor))
                .toList();
        SeasonNeeds needs = new SeasonNeeds(planner, trays.cellsInTray(), visitor.today());
        Supplies group = needs.of(underWay, sowing -> true);
        Supplies own = needs.of(underWay, sowing -> sowing.grower().memberId().equals(visitor.memberId()));
        return new SupplyPage(
                ShoppingList.of(group, own, promises.ofSeason(visitor.season())),
                List.of(Caution.PEROXIDE.sentence(), Caution.COMPOST_DUST.sentence(), Caution.LIFTING_BAGS.sentence()),
                visitor.season(),
                underWay.size(),
                form,
                UUID.randomUUID(),
                PromiseForm.ITEMS,
                PromiseForm.WHOSE,
                visitor.units());
    }
}
