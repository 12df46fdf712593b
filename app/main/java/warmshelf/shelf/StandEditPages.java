package warmshelf.shelf;

import io.javalin.http.Context;
import java.util.function.Supplier;
import warmshelf.web.Respond;
import warmshelf.web.WholePage;

/** What all forms for sites, racks, shelves and mats answer. */
final class StandEditPages {
    private StandEditPages() {}

    static void show(Context ctx, StandEditPage page) {
        Respond.page(ctx, page.template(), new WholePage(page));
    }

    /** The version the person saw when they began to type. */
    static int version(StandEditPage page) {
        return page.form().wholeNumber("version", "Version", 1, Integer.MAX_VALUE);
    }

    /** Makes the change if what was typed can be used; then the list of sites, or the form again with the reason. */
    static void give(Context ctx, StandEditPage page, Supplier<EditOutcome> change, String notice) {
        if (!page.form().ok()) {
            Respond.again(ctx, page.template(), new WholePage(page));
            return;
        }
        EditOutcome outcome = change.get();
        if (outcome instanceof EditOutcome.Refused refused) {
            page.form().refuse(refused.field(), refused.sentence());
            Respond.again(ctx, page.template(), new WholePage(page));
        } else if (outcome instanceof EditOutcome.ChangedMeanwhile) {
            Respond.overtaken(ctx, page.template(), new WholePage(page.whenOvertaken()));
        } else {
            Respond.seeOther(ctx, "/sites", notice);
        }
    }
}
