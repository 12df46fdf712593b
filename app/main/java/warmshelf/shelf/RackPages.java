package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Coordinators add and change the racks of a site. */
public final class RackPages implements Pages {
    private static final String FORM = "shelf/rack.peb";

    private final ShelvingStore shelving;
    private final RackStore racks;

    public RackPages(ShelvingStore shelving, RackStore racks) {
        this.shelving = shelving;
        this.racks = racks;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sites/{id}/racks/new", this::newRack, Role.COORDINATOR);
        routes.post("/sites/{id}/racks", this::addRack, Role.COORDINATOR);
        routes.get("/sites/racks/{id}/change", this::rackAsItIs, Role.COORDINATOR);
        routes.post("/sites/racks/{id}/change", this::changeRack, Role.COORDINATOR);
    }

    private void newRack(Context ctx) {
        Site site = site(ctx);
        ShelvingEditPages.show(
                ctx,
                addRackPage(site, new FormReader(RackForm.blank(site.racks().size() + 1))));
    }

    private void addRack(Context ctx) {
        Site site = site(ctx);
        ShelvingEditPage page = addRackPage(site, new FormReader(ctx.formParamMap()));
        RackDraft draft = RackForm.read(page.form());
        ShelvingEditPages.give(
                ctx, page, () -> racks.add(site.id(), draft, Visitor.of(ctx).memberId()), SAY.rackAdded(draft.name()));
    }

    private void rackAsItIs(Context ctx) {
        Rack rack = rack(ctx);
        ShelvingEditPages.show(ctx, changeRackPage(rack, new FormReader(RackForm.typed(rack))));
    }

    private void changeRack(Context ctx) {
        Rack rack = rack(ctx);
        ShelvingEditPage page = changeRackPage(rack, new FormReader(ctx.formParamMap()));
        RackDraft draft = RackForm.read(page.form());
        int version = ShelvingEditPages.version(page);
        ShelvingEditPages.give(
                ctx,
                page,
                () -> racks.change(rack.id(), version, draft, Visitor.of(ctx).memberId()),
                SAY.rackChanged(draft.name()));
    }

    private Site site(Context ctx) {
        return shelving.site(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Rack rack(Context ctx) {
        return shelving.rack(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static ShelvingEditPage addRackPage(Site site, FormReader form) {
        return ShelvingEditPage.adding(FORM, SAY.addRack(site.name()), "/sites/%s/racks".formatted(site.id()), form);
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
