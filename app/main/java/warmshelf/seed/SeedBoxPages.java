package warmshelf.seed;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.crop.CropCatalogue;
import warmshelf.web.Choice;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** The seed box: what seed there is, whose, how much, and how well it comes up. */
public final class SeedBoxPages implements Pages {
    private static final int LAST_PAGE = 10_000;

    private final LotStore lots;
    private final CropCatalogue crops;

    public SeedBoxPages(LotStore lots, CropCatalogue crops) {
        this.lots = lots;
        this.crops = crops;
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
        Map<UUID, List<GerminationTest>> tests =
                lots.testsOf(found.stream().map(Lot::id).toList());
        int season = Visitor.of(ctx).season();
        ctx.render("seed/list.peb", Map.of("page", SeedBoxPage.of(search, found, tests, crops, season)));
    }

    private void blank(Context ctx) {
        ctx.render("seed/new.peb", newModel(LotForm.blank(Visitor.of(ctx).season())));
    }

    private void add(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        int latestYear = Math.max(visitor.season(), visitor.today().getYear());
        LotForm form = LotForm.of(ctx.formParamMap(), crops, latestYear, visitor.memberId());
        if (form.lot().isEmpty()) {
            Respond.again(ctx, "seed/new.peb", newModel(form));
            return;
        }
        UUID id = lots.add(form.lot().get(), visitor.memberId());
        Respond.seeOther(ctx, "/seeds/" + id, "The lot is in the box.");
    }

    private void show(Context ctx) {
        Lot lot = lot(ctx);
        TestForm test = TestForm.blank(Visitor.of(ctx).today());
        ctx.render("seed/show.peb", lotModel(ctx, lot, test, RecountForm.showing(lot)));
    }

    private void recordTest(Context ctx) {
        Lot lot = changeableLot(ctx);
        Visitor visitor = Visitor.of(ctx);
        TestForm form = TestForm.of(ctx.formParamMap(), visitor.today());
        if (form.test().isEmpty()) {
            Respond.again(ctx, "seed/show.peb", lotModel(ctx, lot, form, RecountForm.showing(lot)));
            return;
        }
        lots.recordTest(lot.id(), form.test().get(), visitor.memberId());
        Respond.seeOther(ctx, "/seeds/" + lot.id(), "The test is recorded.");
    }

    private void recount(Context ctx) {
        Lot lot = changeableLot(ctx);
        Visitor visitor = Visitor.of(ctx);
        RecountForm form = RecountForm.of(ctx.formParamMap());
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
        Respond.seeOther(ctx, "/seeds/" + lot.id(), "The lot is up to date.");
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

    private Map<String, Object> newModel(LotForm form) {
        List<Choice> choices = crops.all().stream()
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
                        new Choice("group", "The group’s (only coordinators change it then)")));
    }

    private Map<String, Object> lotModel(Context ctx, Lot lot, TestForm test, RecountForm recount) {
        LotPage page =
                LotPage.of(lot, lots.tests(lot.id()), crops, Visitor.of(ctx).season(), mayChange(ctx, lot));
        return Map.of("page", page, "testForm", test, "recountForm", recount);
    }
}
