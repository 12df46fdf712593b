package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.crop.CropCatalogue;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;

/** One lot of the seed box: what is known of it, tests of its seed, and counting it anew. */
final class LotPages implements Pages {
    private static final String TEMPLATE = "seed/show.peb";

    private final LotStore lots;
    private final LotBalanceStore balances;
    private final OfferStore offers;
    private final LotUse use;
    private final CropCatalogue crops;
    private final PacketPictures pictures;
    private final GrownBefore grown;

    LotPages(
            LotStore lots,
            LotBalanceStore balances,
            OfferStore offers,
            LotUse use,
            CropCatalogue crops,
            PacketPictures pictures,
            GrownBefore grown) {
        this.lots = lots;
        this.balances = balances;
        this.offers = offers;
        this.use = use;
        this.crops = crops;
        this.pictures = pictures;
        this.grown = grown;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/seeds/{id}", this::show, Role.MEMBER);
        routes.post("/seeds/{id}/tests", this::recordTest, Role.MEMBER);
        routes.post("/seeds/{id}/count", this::recount, Role.MEMBER);
    }

    /**
     * The lot with both its forms.
     *
     * @param origin the lot of which it was taken
     * @param grown what growers said of the variety; empty where nobody has
     * @param degree the sign of the visitor's temperatures
     */
    private record ShownPage(
            LotPage page,
            List<PacketPictures.PacketPicture> pictures,
            Optional<Lot> origin,
            String grown,
            TestForm testForm,
            RecountForm recountForm,
            List<Choice> sources,
            List<Choice> storages,
            String degree) {}

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Lot lot = lot(ctx);
        Respond.page(
                ctx,
                TEMPLATE,
                page(visitor, lot, TestForm.blank(visitor.today()), RecountForm.showing(lot, visitor.units())));
    }

    private ShownPage page(Visitor visitor, Lot lot, TestForm test, RecountForm recount) {
        List<UUID> id = List.of(lot.id());
        LotBalance balance = balances.of(lot);
        return new ShownPage(
                LotPage.of(
                        balance,
                        new LotEvidence(lots.testsOf(id), use.results(id)),
                        crops,
                        visitor.season(),
                        visitor.units(),
                        mayChange(visitor, lot),
                        balance.offered() > 0 && !visitor.memberId().equals(lot.ownerId()),
                        !balance.isAskedFor(visitor.memberId()) && !balance.isUsedUpFor(visitor.memberId())),
                pictures.of(lot.id()),
                offers.origin(lot.id()),
                grown.words(lot.cropId(), lot.variety()),
                test,
                recount,
                KeepingForm.SOURCES,
                KeepingForm.STORAGES,
                visitor.units().degree());
    }

    private void recordTest(Context ctx) {
        Lot lot = changeableLot(ctx);
        Visitor visitor = Visitor.of(ctx);
        TestForm form = TestForm.of(ctx.formParamMap(), visitor.today());
        if (form.test().isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(visitor, lot, form, RecountForm.showing(lot, visitor.units())));
            return;
        }
        lots.recordTest(lot.id(), form.test().get(), visitor.memberId());
        Respond.seeOther(ctx, "/seeds/" + lot.id(), SAY.testRecorded());
    }

    private void recount(Context ctx) {
        Lot lot = changeableLot(ctx);
        Visitor visitor = Visitor.of(ctx);
        RecountForm form = RecountForm.of(ctx.formParamMap(), visitor.units());
        if (form.recount().isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(visitor, lot, TestForm.blank(visitor.today()), form));
            return;
        }
        Decisions.doneOr(
                lots.recount(lot.id(), form.recount().get(), form.version(), visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx,
                "/seeds/" + lot.id(),
                SAY.lotUpToDate(whoFallsShort(lot.id())).strip());
    }

    /** A count below what was promised is a fact, not a fault; but then somebody's plan falls short. */
    private String whoFallsShort(UUID lotId) {
        List<String> lacking = lots.find(lotId).map(balances::of).map(LotBalance::shortfalls).orElse(List.of()).stream()
                .map(each -> "%s (%,d of %,d)"
                        .formatted(
                                each.hold().member(), each.there(), each.hold().seeds()))
                .toList();
        return lacking.isEmpty() ? "" : SAY.shortFor(String.join(", ", lacking));
    }

    private Lot lot(Context ctx) {
        return lots.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Lot changeableLot(Context ctx) {
        Lot lot = lot(ctx);
        if (!mayChange(Visitor.of(ctx), lot)) {
            throw Refusal.forbidden(SAY.onlyOwnerChanges());
        }
        return lot;
    }

    private static boolean mayChange(Visitor visitor, Lot lot) {
        return lot.mayBeChangedBy(visitor.memberId(), visitor.coordinator());
    }
}
