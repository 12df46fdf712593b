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
import warmshelf.words.Units;

/** Coordinators add and change mats. */
public final class MatPages implements Pages {
    private static final String FORM = "shelf/mat.peb";

    private final ShelvingStore shelving;
    private final MatStore mats;

    public MatPages(ShelvingStore shelving, MatStore mats) {
        this.shelving = shelving;
        this.mats = mats;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sites/shelves/{id}/mats/new", this::newMat, Role.SITE_COORDINATOR);
        routes.post("/sites/shelves/{id}/mats", this::addMat, Role.SITE_COORDINATOR);
        routes.get("/sites/mats/{id}/change", this::matAsItIs, Role.SITE_COORDINATOR);
        routes.post("/sites/mats/{id}/change", this::changeMat, Role.SITE_COORDINATOR);
    }

    private void newMat(Context ctx) {
        Shelf shelf = shelf(ctx);
        ShelvingEditPages.show(
                ctx, addMatPage(shelf, new FormReader(MatForm.blank(shelf.mats().size() + 1))));
    }

    private void addMat(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Shelf shelf = shelf(ctx);
        ShelvingEditPage page = addMatPage(shelf, new FormReader(ctx.formParamMap()));
        MatDraft draft = MatForm.read(page.form(), visitor.units());
        ShelvingEditPages.give(
                ctx, page, () -> mats.add(shelf.id(), draft, visitor.memberId()), SAY.matAdded(draft.name()));
    }

    private void matAsItIs(Context ctx) {
        Units units = Visitor.of(ctx).units();
        Mat mat = mat(ctx);
        ShelvingEditPages.show(ctx, changeMatPage(mat, units, new FormReader(MatForm.typed(mat, units))));
    }

    private void changeMat(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Mat mat = mat(ctx);
        ShelvingEditPage page = changeMatPage(mat, visitor.units(), new FormReader(ctx.formParamMap()));
        MatDraft draft = MatForm.read(page.form(), visitor.units(), mat);
        int version = ShelvingEditPages.version(page);
        ShelvingEditPages.give(
                ctx,
                page,
                () -> mats.change(mat.id(), version, draft, visitor.memberId(), visitor.today()),
                SAY.matChanged(draft.name()));
    }

    private Shelf shelf(Context ctx) {
        return shelving.shelf(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private Mat mat(Context ctx) {
        return shelving.mat(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private static ShelvingEditPage addMatPage(Shelf shelf, FormReader form) {
        return ShelvingEditPage.adding(
                FORM, SAY.addMat(shelf.fromTop()), "/sites/shelves/%s/mats".formatted(shelf.id()), form);
    }

    private static ShelvingEditPage changeMatPage(Mat mat, Units units, FormReader form) {
        return ShelvingEditPage.changing(
                FORM,
                SAY.changeMat(mat.name()),
                "/sites/mats/%s/change".formatted(mat.id()),
                form,
                mat.words(units),
                mat.version());
    }
}
