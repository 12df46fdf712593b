package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SiteRight;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Coordinators add and change the racks of a site. */
public final class RackPages implements Pages {
    private static final String FORM = "shelf/rack.peb";
    private static final String NEW = "shelf/new-rack.peb";

    private final ShelvingStore shelving;
    private final RackStore racks;

    public RackPages(ShelvingStore shelving, RackStore racks) {
        this.shelving = shelving;
        this.racks = racks;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sites/{id}/racks/new", this::newRack, Role.SITE_COORDINATOR);
        routes.post("/sites/{id}/racks", this::addRack, Role.SITE_COORDINATOR);
        routes.get("/sites/racks/{id}/change", this::rackAsItIs, Role.SITE_COORDINATOR);
        routes.post("/sites/racks/{id}/change", this::changeRack, Role.SITE_COORDINATOR);
    }

    /** A form on which the shelves of a new rack are chosen too; {@code contents} is what each can hold. */
    private record NewRackPage(ShelvingEditPage page, List<Choice> contents, List<Row> rows) {
        /** A shelf's field, counted from the top. */
        private record Row(String field, int fromTop) {}

        static NewRackPage of(ShelvingEditPage page) {
            return new NewRackPage(
                    page,
                    ShelfContent.all().stream().map(ShelfContent::choice).toList(),
                    IntStream.rangeClosed(1, NewRackForm.SHELVES)
                            .mapToObj(fromTop -> new Row(NewRackForm.field(fromTop), fromTop))
                            .toList());
        }
    }

    /** A form on which a rack is moved to another site too. */
    private record ChangeRackPage(ShelvingEditPage page, List<Site> sites) {}

    private void newRack(Context ctx) {
        Site site = site(ctx);
        List<Shelf> like = Optional.ofNullable(ctx.queryParam("like"))
                .flatMap(id -> shelving.all().stream()
                        .flatMap(each -> each.racks().stream())
                        .filter(rack -> rack.id().toString().equals(id))
                        .findFirst())
                .map(Rack::shelves)
                .orElse(List.of());
        FormReader form = new FormReader(NewRackForm.blank(
                site.racks().size() + 1, like, shelves(), Visitor.of(ctx).units()));
        ShelvingEditPage page = addRackPage(site, form);
        Respond.page(ctx, page.template(), NewRackPage.of(page));
    }

    private void addRack(Context ctx) {
        Site site = site(ctx);
        Visitor visitor = Visitor.of(ctx);
        ShelvingEditPage page = addRackPage(site, new FormReader(ctx.formParamMap()));
        List<Mat> mats =
                shelves().stream().flatMap(shelf -> shelf.mats().stream()).toList();
        NewRack draft = NewRackForm.read(page.form(), visitor.units(), mats);
        boolean another = "another".equals(ctx.formParam("then"));
        ShelvingEditPages.give(
                ctx,
                page,
                NewRackPage::of,
                () -> racks.add(site.id(), draft, visitor.memberId()),
                rack -> another ? "/sites/%s/racks/new?like=%s".formatted(site.id(), rack) : "/sites",
                SAY.rackAdded(draft.rack().name()));
    }

    private List<Shelf> shelves() {
        return shelving.all().stream()
                .flatMap(site -> site.racks().stream())
                .flatMap(rack -> rack.shelves().stream())
                .toList();
    }

    private void rackAsItIs(Context ctx) {
        Rack rack = rack(ctx);
        ShelvingEditPage page = changeRackPage(rack, new FormReader(RackForm.typed(rack)));
        Respond.page(ctx, page.template(), new ChangeRackPage(page, theirs(ctx)));
    }

    private void changeRack(Context ctx) {
        Rack rack = rack(ctx);
        ShelvingEditPage page = changeRackPage(rack, new FormReader(ctx.formParamMap()));
        RackDraft draft = RackForm.read(page.form());
        UUID site = RackForm.site(page.form(), rack, shelving.all());
        SiteRight.require(Visitor.of(ctx), site);
        int version = ShelvingEditPages.version(page);
        ShelvingEditPages.give(
                ctx,
                page,
                shown -> new ChangeRackPage(shown, theirs(ctx)),
                () -> racks.change(
                        rack.id(), version, draft, site, Visitor.of(ctx).memberId()),
                changed -> "/sites",
                SAY.rackChanged(draft.name()));
    }

    private List<Site> theirs(Context ctx) {
        return shelving.all().stream()
                .filter(site -> Visitor.of(ctx).reach().covers(site.id()))
                .toList();
    }

    private Site site(Context ctx) {
        return shelving.site(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Rack rack(Context ctx) {
        return shelving.rack(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static ShelvingEditPage addRackPage(Site site, FormReader form) {
        return ShelvingEditPage.adding(NEW, SAY.addRack(site.name()), "/sites/%s/racks".formatted(site.id()), form);
    }

    private static ShelvingEditPage changeRackPage(Rack rack, FormReader form) {
        return ShelvingEditPage.changing(
                FORM,
                SAY.changeRack(rack.name()),
                "/sites/racks/%s/change".formatted(rack.id()),
                form,
                rack.words(),
                rack.version());
    }
}
