package warmshelf.seed;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.MaturityForm;
import warmshelf.crop.VarietyStore;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;

/** The seed box: what seed there is, whose, how much, and how well it comes up. */
public final class SeedBoxPages implements Pages {
    private static final int LAST_PAGE = 10_000;

    private final LotStore lots;
    private final LotBalanceStore balances;
    private final OfferStore offers;
    private final LotUse use;
    private final CropCatalogue crops;
    private final VarietyStore varieties;
    private final PacketPictures pictures;

    public SeedBoxPages(
            LotStore lots,
            LotBalanceStore balances,
            OfferStore offers,
            LotUse use,
            CropCatalogue crops,
            VarietyStore varieties,
            PacketPictures pictures) {
        this.lots = lots;
        this.balances = balances;
        this.offers = offers;
        this.use = use;
        this.crops = crops;
        this.varieties = varieties;
        this.pictures = pictures;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/seeds", this::list, Role.MEMBER);
        routes.get("/seeds/new", this::blank, Role.MEMBER);
        routes.post("/seeds", this::add, Role.MEMBER);
        routes.get("/seeds/{id}", this::show, Role.MEMBER);
        routes.post("/seeds/{id}/tests", this::recordTest, Role.MEMBER);
        routes.post("/seeds/{id}/count", this::recount, Role.MEMBER);
    }

    private void list(Context ctx) {
        String text = ctx.queryParam("q");
        LotSearch search = SeedBoxPage.search(text == null ? "" : text, pageNumber(ctx), crops);
        List<Lot> found = lots.list(search);
        if (found.isEmpty() && !search.text().isEmpty()) {
            search = SeedBoxPage.forgiving(search, lots.varieties(), crops);
            found = lots.list(search);
        }
        int season = Visitor.of(ctx).season();
        boolean wholeBox = search.text().isEmpty() && search.page() == 0;
        ctx.render(
                "seed/list.peb",
                Map.of(
                        "page",
                        SeedBoxPage.of(
                                search,
                                found,
                                balances.of(found),
                                evidence(found),
                                crops,
                                season,
                                wholeBox ? worthTesting(season) : List.of())));
    }

    private List<WorthTesting.Suggestion> worthTesting(int season) {
        Map<UUID, LotUse.Meant> meant = use.meant(season);
        List<Lot> candidates = WorthTesting.candidates(lots.withSeed(), meant);
        return new WorthTesting(crops, season, evidence(candidates)).of(candidates, meant);
    }

    private LotEvidence evidence(List<Lot> some) {
        List<UUID> ids = some.stream().map(Lot::id).toList();
        return new LotEvidence(lots.testsOf(ids), use.results(ids));
    }

    private void blank(Context ctx) {
        ctx.render("seed/new.peb", newModel(ctx, LotForm.blank(Visitor.of(ctx).season())));
    }

    private void add(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int latestYear = Math.max(visitor.season(), visitor.today().getYear());
        LotForm form = LotForm.of(ctx.formParamMap(), crops, latestYear, visitor.memberId(), visitor.units());
        if (form.lot().isEmpty()) {
            Respond.again(ctx, "seed/new.peb", newModel(ctx, form));
            return;
        }
        NewLot lot = form.lot().get();
        UUID id = lots.add(lot, visitor.memberId());
        Respond.seeOther(ctx, "/seeds/" + id, "The lot is in the box." + noteMaturity(lot, form.maturity(), visitor));
    }

    /** What a packet says of its variety counts for the group, unless more is known already. */
    private String noteMaturity(NewLot lot, Optional<DaysToMaturity> maturity, Visitor visitor) {
        if (maturity.isEmpty()) {
            return "";
        }
        boolean first =
                varieties.write(lot.cropId(), lot.variety(), maturity.get(), "the packet", 0, visitor.memberId());
        return first || crops.ofVariety(lot.cropId(), lot.variety()).maturity().equals(maturity)
                ? " Dates for %s go by the days on its packet.".formatted(lot.variety())
                : " Of %s other days are known already; they stay until a coordinator changes them on its crop’s page."
                        .formatted(lot.variety());
    }

    private void show(Context ctx) {
        Lot lot = lot(ctx);
        TestForm test = TestForm.blank(Visitor.of(ctx).today());
        ctx.render(
                "seed/show.peb",
                lotModel(
                        ctx, lot, test, RecountForm.showing(lot, Visitor.of(ctx).units())));
    }

    private void recordTest(Context ctx) {
        Lot lot = changeableLot(ctx);
        Visitor visitor = Visitor.of(ctx);
        TestForm form = TestForm.of(ctx.formParamMap(), visitor.today());
        if (form.test().isEmpty()) {
            Respond.again(
                    ctx,
                    "seed/show.peb",
                    lotModel(
                            ctx,
                            lot,
                            form,
                            RecountForm.showing(lot, Visitor.of(ctx).units())));
            return;
        }
        lots.recordTest(lot.id(), form.test().get(), visitor.memberId());
        Respond.seeOther(ctx, "/seeds/" + lot.id(), "The test is recorded.");
    }

    private void recount(Context ctx) {
        Lot lot = changeableLot(ctx);
        Visitor visitor = Visitor.of(ctx);
        RecountForm form = RecountForm.of(ctx.formParamMap(), visitor.units());
        if (form.recount().isEmpty()) {
            Respond.again(ctx, "seed/show.peb", lotModel(ctx, lot, TestForm.blank(visitor.today()), form));
            return;
        }
        if (!lots.recount(lot.id(), form.recount().get(), form.version(), visitor.memberId())) {
            throw Refusal.of(
                    HttpStatus.CONFLICT,
                    "Seeds were taken or someone changed this lot while you were typing, so nothing was changed."
                            + " Go back, load the page again, and look at the new figures.");
        }
        Respond.seeOther(ctx, "/seeds/" + lot.id(), "The lot is up to date." + whoFallsShort(lot.id()));
    }

    /** A count below what was promised is a fact, not a fault; but then somebody's plan falls short. */
    private String whoFallsShort(UUID lotId) {
        List<String> lacking = lots.find(lotId).map(balances::of).map(LotBalance::shortfalls).orElse(List.of()).stream()
                .map(each -> "%s (%,d of %,d)"
                        .formatted(
                                each.hold().member(), each.there(), each.hold().seeds()))
                .toList();
        return lacking.isEmpty()
                ? ""
                : " It does not meet what is planned on it: too few are left for %s. They see it at their sowings."
                        .formatted(String.join(", ", lacking));
    }

    private Lot lot(Context ctx) {
        return lots.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Lot changeableLot(Context ctx) {
        Lot lot = lot(ctx);
        if (!mayChange(ctx, lot)) {
            throw Refusal.forbidden("Only the owner of this seed or a coordinator can change it.");
        }
        return lot;
    }

    private static boolean mayChange(Context ctx, Lot lot) {
        Visitor visitor = Visitor.of(ctx);
        return lot.mayBeChangedBy(visitor.memberId(), visitor.coordinator());
    }

    private static int pageNumber(Context ctx) {
        String number = ctx.queryParam("page");
        // An address with a page that cannot be shows the first one rather than an error.
        return number != null && number.matches("\\d{1,5}") ? Math.min(LAST_PAGE, Integer.parseInt(number)) : 0;
    }

    private Map<String, Object> newModel(Context ctx, LotForm form) {
        List<Choice> choices = crops.fromSeed().stream()
                .map(crop -> new Choice(crop.id(), crop.name()))
                .toList();
        return Map.of(
                "form",
                form,
                "crops",
                choices,
                "owners",
                List.of(
                        new Choice("mine", "Mine"),
                        new Choice("group", "The group’s (only coordinators change it then)")),
                "sources",
                KeepingForm.SOURCES,
                "storages",
                KeepingForm.STORAGES,
                "bases",
                MaturityForm.BASES,
                "degree",
                degree(ctx));
    }

    private Map<String, Object> lotModel(Context ctx, Lot lot, TestForm test, RecountForm recount) {
        Visitor visitor = Visitor.of(ctx);
        LotBalance balance = balances.of(lot);
        LotPage page = LotPage.of(
                balance,
                evidence(List.of(lot)),
                crops,
                visitor.season(),
                visitor.units(),
                mayChange(ctx, lot),
                balance.offered() > 0 && !visitor.memberId().equals(lot.ownerId()));
        return Map.of(
                "page",
                page,
                "pictures",
                pictures.of(lot.id()),
                "origin",
                offers.origin(lot.id()),
                "testForm",
                test,
                "recountForm",
                recount,
                "sources",
                KeepingForm.SOURCES,
                "storages",
                KeepingForm.STORAGES,
                "degree",
                degree(ctx));
    }

    private static String degree(Context ctx) {
        return "°" + Visitor.of(ctx).units().temperature();
    }
}
