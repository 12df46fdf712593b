package warmshelf.frost;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import warmshelf.web.Pages;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** The frost page: a member's own frost dates, or those of a place they ask for. */
public final class FrostPages implements Pages {
    @Override
    public void register(RoutesConfig routes) {
        routes.get("/frost", this::show, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        FrostForm form = FrostForm.of(ctx.queryParamMap(), visitor.country(), visitor.postcode());
        boolean asked = !ctx.queryParamMap().isEmpty();
        if (asked && !form.problems().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        ctx.render("frost/show.peb", Map.of("page", FrostPage.of(form, visitor.season()), "form", form));
    }
}
