package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.http.Context;
import java.util.UUID;
import java.util.function.Supplier;
import warmshelf.decision.Decision;
import warmshelf.web.Respond;
import warmshelf.web.Visitor;
import warmshelf.web.WholePage;

/** What all forms for sites, racks, shelves and mats answer. */
final class ShelvingEditPages {
    private ShelvingEditPages() {}

    static void show(Context ctx, ShelvingEditPage page) {
        Respond.page(ctx, page.template(), new WholePage(page));
    }

    /** The version the person saw when they began to type. */
    static int version(ShelvingEditPage page) {
        return page.form().wholeNumber("version", SAY.versionField(), 1, Integer.MAX_VALUE);
    }

    /** Makes the change if what was typed can be used; then the list of sites, or the form again with the reason. */
    static void give(Context ctx, ShelvingEditPage page, Supplier<Decision<UUID>> change, String notice) {
        if (!page.form().ok()) {
            Respond.again(ctx, page.template(), new WholePage(page));
            return;
        }
        Decision<UUID> decision = change.get();
        if (decision instanceof Decision.Refused<UUID> refused && refused.reason() instanceof ShelfRefusal no) {
            page.form().refuse(no.field(), no.words(Visitor.of(ctx).units()));
            Respond.again(ctx, page.template(), new WholePage(page));
        } else if (decision instanceof Decision.Overtaken) {
            Respond.overtaken(ctx, page.template(), new WholePage(page.whenOvertaken()));
        } else {
            Respond.seeOther(ctx, "/sites", notice);
        }
    }
}
