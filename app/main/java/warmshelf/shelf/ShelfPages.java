package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.UUID;
import warmshelf.decision.Decision;
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
        routes.get("/sites/racks/{id}/shelves/new", this::newShelf, Role.SITE_COORDINATOR);
        routes.post("/sites/racks/{id}/shelves", this::addShelf, Role.SITE_COORDINATOR);
        routes.get("/sites/shelves/{id}/change", this::shelfAsItIs, Role.SITE_COORDINATOR);
        routes.post("/sites/shelves/{id}/change", this::changeShelf, Role.SITE_COORDINATOR);
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
        UUID by = Visitor.of(ctx).memberId();
        ShelvingEditPages.give(
                ctx,
                page,
                () -> withUse(shelves.add(rack.id(), draft, by), page, by),
                SAY.shelfAdded(draft.fromTop(), rack.name()));
    }

    private void shelfAsItIs(Context ctx) {
        Shelf shelf = shelf(ctx);
        ShelvingEditPages.show(
                ctx,
                changeShelfPage(
                        shelf,
                        new FormReader(
                                ShelfForm.typed(shelf, quarantine.shelves().contains(shelf.id())))));
    }

    private void changeShelf(Context ctx) {
        Shelf shelf = shelf(ctx);
        ShelvingEditPage page = changeShelfPage(shelf, new FormReader(ctx.formParamMap()));
        ShelfDraft draft = ShelfForm.read(page.form());
        UUID by = Visitor.of(ctx).memberId();
        int version = ShelvingEditPages.version(page);
        ShelvingEditPages.give(
                ctx,
                page,
                () -> withUse(shelves.change(shelf.id(), version, draft, by), page, by),
                SAY.shelfChanged(draft.fromTop()));
    }

    /** What was ticked of its use is kept with the shelf. */
    private Decision<UUID> withUse(Decision<UUID> kept, ShelvingEditPage page, UUID by) {
        if (kept instanceof Decision.Done<UUID> done) {
            quarantine.name(done.value(), page.form().ticked(ShelfForm.QUARANTINE), by);
        }
        return kept;
    }

    private Shelf shelf(Context ctx) {
        return shelving.shelf(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static ShelvingEditPage addShelfPage(Rack rack, FormReader form) {
        return ShelvingEditPage.adding(
                FORM, SAY.addShelf(rack.name()), "/sites/racks/%s/shelves".formatted(rack.id()), form);
    }

    private static ShelvingEditPage changeShelfPage(Shelf shelf, FormReader form) {
        return ShelvingEditPage.changing(
                FORM,
                SAY.changeShelf(shelf.fromTop()),
                "/sites/shelves/%s/change".formatted(shelf.id()),
                form,
                shelf.words(),
                shelf.version());
    }
}
