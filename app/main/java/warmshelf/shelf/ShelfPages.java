package warmshelf.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Coordinators add and change the shelves of a rack. */
public final class ShelfPages implements Pages {
    private static final String FORM = "shelf/shelf.peb";

    private final ShelvingStore shelving;
    private final ShelfStore shelves;
    private final QuarantineStore quarantine;

    public ShelfPages(ShelvingStore shelving, ShelfStore shelves, QuarantineStore quarantine) {
        this.shelving = shelving;
        this.shelves = shelves;
        this.quarantine = quarantine;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sites/racks/{id}/shelves/new", this::newShelf, Role.COORDINATOR);
        routes.post("/sites/racks/{id}/shelves", this::addShelf, Role.COORDINATOR);
        routes.get("/sites/shelves/{id}/change", this::shelfAsItIs, Role.COORDINATOR);
        routes.post("/sites/shelves/{id}/change", this::changeShelf, Role.COORDINATOR);
        routes.post("/sites/shelves/{id}/quarantine", this::nameQuarantine, Role.COORDINATOR);
    }

    private void newShelf(Context ctx) {
        Rack rack = shelving.rack(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        int below = rack.shelves().stream().mapToInt(Shelf::fromTop).max().orElse(0) + 1;
        ShelvingEditPages.show(ctx, addShelfPage(rack, new FormReader(ShelfForm.blank(below))));
    }

    private void addShelf(Context ctx) {
        Rack rack = shelving.rack(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        ShelvingEditPage page = addShelfPage(rack, new FormReader(ctx.formParamMap()));
        ShelfDraft draft = ShelfForm.read(page.form());
        ShelvingEditPages.give(
                ctx,
                page,
                () -> shelves.add(rack.id(), draft, Visitor.of(ctx).memberId()),
                "Shelf %d of rack %s is added.".formatted(draft.fromTop(), rack.name()));
    }

    private void shelfAsItIs(Context ctx) {
        Shelf shelf = shelf(ctx);
        ShelvingEditPages.show(ctx, changeShelfPage(shelf, new FormReader(ShelfForm.typed(shelf))));
    }

    private void changeShelf(Context ctx) {
        Shelf shelf = shelf(ctx);
        ShelvingEditPage page = changeShelfPage(shelf, new FormReader(ctx.formParamMap()));
        ShelfDraft draft = ShelfForm.read(page.form());
        int version = ShelvingEditPages.version(page);
        ShelvingEditPages.give(
                ctx,
                page,
                () -> shelves.change(shelf.id(), version, draft, Visitor.of(ctx).memberId()),
                "Shelf %d is changed.".formatted(draft.fromTop()));
    }

    private void nameQuarantine(Context ctx) {
        Shelf shelf = shelf(ctx);
        boolean named = new FormReader(ctx.formParamMap()).ticked("quarantine");
        quarantine.name(shelf.id(), named, Visitor.of(ctx).memberId());
        Respond.seeOther(
                ctx,
                "/sites",
                named
                        ? "Shelf %d is a quarantine shelf now: nothing is planned or offered there. What lies there stays."
                                .formatted(shelf.fromTop())
                        : "Shelf %d is a shelf like others again.".formatted(shelf.fromTop()));
    }

    private Shelf shelf(Context ctx) {
        return shelving.shelf(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static ShelvingEditPage addShelfPage(Rack rack, FormReader form) {
        return ShelvingEditPage.adding(
                FORM, "Add a shelf to rack " + rack.name(), "/sites/racks/%s/shelves".formatted(rack.id()), form);
    }

    private static ShelvingEditPage changeShelfPage(Shelf shelf, FormReader form) {
        return ShelvingEditPage.changing(
                FORM,
                "Change shelf " + shelf.fromTop(),
                "/sites/shelves/%s/change".formatted(shelf.id()),
                form,
                shelf.words(),
                shelf.version());
    }
}
