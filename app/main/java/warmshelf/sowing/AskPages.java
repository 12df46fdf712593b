package warmshelf.sowing;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import warmshelf.seed.SeedSource;
import warmshelf.seed.StorageKind;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Asking for space: the form. */
final class AskPages implements Pages {
    private final AskFormView forms;

    AskPages(AskFormView forms) {
        this.forms = forms;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/ask", this::form, Role.MEMBER);
    }

    private void form(Context ctx) {
        Map<String, List<String>> typed = new HashMap<>(ctx.queryParamMap());
        typed.putIfAbsent("method", List.of("cells"));
        typed.putIfAbsent("heat", List.of("warm"));
        typed.putIfAbsent("after", List.of("light"));
        typed.putIfAbsent("container", List.of("half-tray"));
        typed.putIfAbsent("where", List.of("outdoors"));
        typed.putIfAbsent("source", List.of(SeedSource.PACKET.word()));
        typed.putIfAbsent("storage", List.of(StorageKind.UNKNOWN.word()));
        typed.putIfAbsent("cellsInATray", List.of("72"));
        typed.putIfAbsent("risk", List.of(""));
        Respond.page(ctx, AskFormPage.TEMPLATE, forms.page(Visitor.of(ctx), new FormReader(typed)));
    }
}
