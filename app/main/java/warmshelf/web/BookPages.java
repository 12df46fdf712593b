package warmshelf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;

/** The pages to read: how the group's loop goes, and where the numbers come from. The bare address leads to today. */
public final class BookPages implements Pages {
    @Override
    public void register(RoutesConfig routes) {
        // Anyone: signed-out people are sent on to sign in from there.
        routes.get("/", ctx -> ctx.redirect("/today", HttpStatus.SEE_OTHER), Role.ANYONE);
        // Anyone: nothing in them is the group's own.
        routes.get("/help", ctx -> Respond.page(ctx, "web/help.peb"), Role.ANYONE);
        routes.get("/numbers", ctx -> Respond.page(ctx, "web/numbers.peb"), Role.ANYONE);
    }
}
