package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.List;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** How true to size a screen is, kept by the browser itself: it differs from one device of a person to the next. */
final class LabelScreenPages implements Pages {
    private static final String COOKIE = "warmshelf-screen";
    private static final List<String> STEPS = List.of("-10", "-1", "1", "10");
    private static final Duration KEPT = Duration.ofDays(400);

    @Override
    public void register(RoutesConfig routes) {
        routes.post(LabelPages.ADDRESS + "/screen", this::adjust, Role.MEMBER);
    }

    /** The ruler for the screen that asks. */
    static ScreenRuler ruler(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        return ScreenRuler.of(ctx.cookie(COOKIE), visitor.units().inInches(), visitor.country());
    }

    private void adjust(Context ctx) {
        FormReader form = new FormReader(ctx.formParamMap());
        String step = form.text("larger");
        ScreenRuler next = STEPS.contains(step) ? ruler(ctx).larger(Integer.parseInt(step)) : ruler(ctx);
        ctx.cookie(new Cookie(COOKIE, next.kept(), "/", (int) KEPT.toSeconds(), false, true, null, SameSite.LAX));
        String of = LabelScope.of(form.text("of")).orElse(LabelScope.MINE).text();
        Respond.seeOther(ctx, LabelPages.ADDRESS + "?open=screen&of=" + of + "#screen", SAY.screenKept());
    }
}
