package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Decision;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Offering part of a lot to everybody, and taking of what is offered. */
final class OfferPages implements Pages {
    private final LotStore lots;
    private final OfferStore offers;
    private final LotBalanceStore balances;
    private final CropCatalogue crops;

    OfferPages(LotStore lots, OfferStore offers, LotBalanceStore balances, CropCatalogue crops) {
        this.lots = lots;
        this.offers = offers;
        this.balances = balances;
        this.crops = crops;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/seeds/{id}/offer", this::offerForm, Role.MEMBER);
        routes.post("/seeds/{id}/offer", this::offer, Role.MEMBER);
        routes.get("/seeds/{id}/take", this::takeForm, Role.MEMBER);
        routes.post("/seeds/{id}/take", this::take, Role.MEMBER);
    }

    private void offerForm(Context ctx) {
        Lot lot = changeable(ctx);
        Respond.page(
                ctx, "seed/offer.peb", page(lot, typed("seeds", balances.of(lot).offered())));
    }

    private void offer(Context ctx) {
        Lot lot = changeable(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        int seeds = form.wholeNumber("seeds", "Seeds offered", 0, most(lot));
        if (form.ok()) {
            refuse(ctx, form, offers.offer(lot.id(), seeds, Visitor.of(ctx).memberId()));
        }
        if (!form.ok()) {
            Respond.again(ctx, "seed/offer.peb", page(lot, form));
            return;
        }
        Respond.seeOther(ctx, "/seeds/" + lot.id(), seeds == 0 ? SAY.nothingOffered() : SAY.areOffered(seeds));
    }

    private void takeForm(Context ctx) {
        Lot lot = offered(ctx);
        Respond.page(ctx, "seed/take.peb", page(lot, typed("seeds", 0)));
    }

    private void take(Context ctx) {
        Lot lot = offered(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        int seeds = form.wholeNumber("seeds", "Seeds taken", 1, LotForm.MOST_SEEDS);
        UUID taken = UUID.randomUUID();
        if (form.ok()) {
            refuse(ctx, form, offers.take(lot, taken, seeds, Visitor.of(ctx).memberId()));
        }
        if (!form.ok()) {
            Respond.again(ctx, "seed/take.peb", page(lot, form));
            return;
        }
        Respond.seeOther(ctx, "/seeds/" + taken, SAY.areYours(seeds));
    }

    /** Says at the field why it was not done, if it was not. */
    private static void refuse(Context ctx, FormReader form, Decision<?> decision) {
        decision.refusal()
                .ifPresent(reason ->
                        form.refuse("seeds", reason.words(Visitor.of(ctx).units())));
    }

    private Lot changeable(Context ctx) {
        Lot lot = lot(ctx);
        Visitor visitor = Visitor.of(ctx);
        if (!lot.mayBeChangedBy(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(SAY.onlyOwnerOffers());
        }
        return lot;
    }

    private Lot offered(Context ctx) {
        Lot lot = lot(ctx);
        if (Visitor.of(ctx).memberId().equals(lot.ownerId())) {
            throw Refusal.conflict(SAY.yoursAlready());
        }
        if (balances.of(lot).offered() == 0) {
            throw Refusal.conflict(SAY.lastTaken());
        }
        return lot;
    }

    private Lot lot(Context ctx) {
        return lots.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static int most(Lot lot) {
        Integer left = lot.seedsLeft();
        return left == null ? LotForm.MOST_SEEDS : left;
    }

    private static FormReader typed(String field, int number) {
        return new FormReader(Map.of(field, List.of(number == 0 ? "" : String.valueOf(number))));
    }

    /**
     * Offering of a lot, or taking of it.
     *
     * @param crop its crop's name
     * @param left what is left of it, in words
     * @param offered how many seeds of it are offered
     */
    private record FormPage(Lot lot, String crop, String left, int offered, FormReader form) {}

    private FormPage page(Lot lot, FormReader form) {
        LotBalance balance = balances.of(lot);
        return new FormPage(
                lot, crops.orUnlisted(lot.cropId()).name(), new BalanceWords(balance).left(), balance.offered(), form);
    }
}
