package warmshelf.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Coordinators add and change shelves and mats. */
public final class MatPages implements Pages {
    private static final String SHELF_FORM = "shelf/shelf.peb";
    private static final String MAT_FORM = "shelf/mat.peb";

    private final ShelvingStore shelving;
    private final ShelfStore shelves;
    private final MatStore mats;

    public MatPages(ShelvingStore shelving, ShelfStore shelves, MatStore mats) {
        this.shelving = shelving;
        this.shelves = shelves;
        this.mats = mats;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sites/racks/{id}/shelves/new", this::newShelf, Role.COORDINATOR);
        routes.post("/sites/racks/{id}/shelves", this::addShelf, Role.COORDINATOR);
        routes.get("/sites/shelves/{id}/change", this::shelfAsItIs, Role.COORDINATOR);
        routes.post("/sites/shelves/{id}/change", this::changeShelf, Role.COORDINATOR);
        routes.get("/sites/shelves/{id}/mats/new", this::newMat, Role.COORDINATOR);
        routes.post("/sites/shelves/{id}/mats", this::addMat, Role.COORDINATOR);
        routes.get("/sites/mats/{id}/change", this::matAsItIs, Role.COORDINATOR);
        routes.post("/sites/mats/{id}/change", this::changeMat, Role.COORDINATOR);
    }

    private void newShelf(Context ctx) {
        Rack rack = shelving.rack(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        int below = rack.shelves().stream().mapToInt(Shelf::fromTop).max().orElse(0) + 1;
        StandEditPages.show(ctx, addShelfPage(rack, new FormReader(ShelfForm.blank(below))));
    }

    private void addShelf(Context ctx) {
        Rack rack = shelving.rack(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        StandEditPage page = addShelfPage(rack, new FormReader(ctx.formParamMap()));
        ShelfDraft draft = ShelfForm.read(page.form());
        StandEditPages.give(
                ctx,
                page,
                () -> shelves.add(rack.id(), draft, Visitor.of(ctx).memberId()),
                "Shelf %d of rack %s is added.".formatted(draft.fromTop(), rack.name()));
    }

    private void shelfAsItIs(Context ctx) {
        Shelf shelf = shelf(ctx);
        StandEditPages.show(ctx, changeShelfPage(shelf, new FormReader(ShelfForm.typed(shelf))));
    }

    private void changeShelf(Context ctx) {
        Shelf shelf = shelf(ctx);
        StandEditPage page = changeShelfPage(shelf, new FormReader(ctx.formParamMap()));
        ShelfDraft draft = ShelfForm.read(page.form());
        int version = StandEditPages.version(page);
        StandEditPages.give(
                ctx,
                page,
                () -> shelves.change(shelf.id(), version, draft, Visitor.of(ctx).memberId()),
                "Shelf %d is changed.".formatted(draft.fromTop()));
    }

    private void newMat(Context ctx) {
        Shelf shelf = shelf(ctx);
        StandEditPages.show(
                ctx, addMatPage(shelf, new FormReader(MatForm.blank(shelf.mats().size() + 1))));
    }

    private void addMat(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Shelf shelf = shelf(ctx);
        StandEditPage page = addMatPage(shelf, new FormReader(ctx.formParamMap()));
        MatDraft draft = MatForm.read(page.form(), visitor.units());
        StandEditPages.give(
                ctx,
                page,
                () -> mats.add(shelf.id(), draft, visitor.memberId()),
                "Mat %s is added.".formatted(draft.name()));
    }

    private void matAsItIs(Context ctx) {
        Units units = Visitor.of(ctx).units();
        Mat mat = mat(ctx);
        StandEditPages.show(ctx, changeMatPage(mat, units, new FormReader(MatForm.typed(mat, units))));
    }

    private void changeMat(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Mat mat = mat(ctx);
        StandEditPage page = changeMatPage(mat, visitor.units(), new FormReader(ctx.formParamMap()));
        MatDraft draft = MatForm.read(page.form(), visitor.units(), mat);
        int version = StandEditPages.version(page);
        StandEditPages.give(
                ctx,
                page,
                () -> mats.change(mat.id(), version, draft, visitor.memberId(), visitor.today(), visitor.units()),
                "Mat %s is changed.".formatted(draft.name()));
    }

    private Shelf shelf(Context ctx) {
        return shelving.shelf(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Mat mat(Context ctx) {
        return shelving.mat(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static StandEditPage addShelfPage(Rack rack, FormReader form) {
        return StandEditPage.adding(
                SHELF_FORM, "Add a shelf to rack " + rack.name(), "/sites/racks/%s/shelves".formatted(rack.id()), form);
    }

    private static StandEditPage changeShelfPage(Shelf shelf, FormReader form) {
        return StandEditPage.changing(
                SHELF_FORM,
                "Change shelf " + shelf.fromTop(),
                "/sites/shelves/%s/change".formatted(shelf.id()),
                form,
                shelf.words(),
                shelf.version());
    }

    private static StandEditPage addMatPage(Shelf shelf, FormReader form) {
        return StandEditPage.adding(
                MAT_FORM,
                "Add a mat to shelf " + shelf.fromTop(),
                "/sites/shelves/%s/mats".formatted(shelf.id()),
                form);
    }

    private static StandEditPage changeMatPage(Mat mat, Units units, FormReader form) {
        return StandEditPage.changing(
                MAT_FORM,
                "Change mat " + mat.name(),
                "/sites/mats/%s/change".formatted(mat.id()),
                form,
                mat.words(units),
                mat.version());
    }
}
