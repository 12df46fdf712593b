package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import io.javalin.http.Context;
import java.util.UUID;
import java.util.function.Function;
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
        give(ctx, page, WholePage::new, change, added -> "/sites", notice);
    }

    /**
     * The same with a form that shows more, or goes on elsewhere.
     *
     * @param shown what its template needs
     * @param then where it goes on once the thing is added, by its id
     */
    static void give(
            Context ctx,
            ShelvingEditPage page,
            Function<ShelvingEditPage, Record> shown,
            Supplier<Decision<UUID>> change,
            Function<UUID, String> then,
            String notice) {
        if (!page.form().ok()) {
            Respond.again(ctx, page.template(), shown.apply(page));
            return;
        }
        Decision<UUID> decision = change.get();
        if (decision instanceof Decision.Refused<UUID> refused && refused.reason() instanceof ShelfRefusal no) {
            page.form().refuse(no.field(), no.words(Visitor.of(ctx).units()));
            Respond.again(ctx, page.template(), shown.apply(page));
        } else if (decision instanceof Decision.Overtaken) {
            Respond.overtaken(ctx, page.template(), shown.apply(page.whenOvertaken()));
        } else {
            Respond.seeOther(ctx, then.apply(decision.orDecline()), notice);
        }
    }
}
