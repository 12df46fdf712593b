package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.decision.Decision;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Codes to stick on racks, mats and trays: scanned or typed, each opens its page. */
public final class CodePages implements Pages {
    private final CodeStore codes;

    CodePages(CodeStore codes) {
        this.codes = codes;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/code", this::type, Role.MEMBER);
        routes.get("/c/{code}", ctx -> open(ctx, ctx.pathParam("code")), Role.MEMBER);
        // QR codes hold the address in capitals, because that makes them smaller.
        routes.get("/C/{code}", ctx -> open(ctx, ctx.pathParam("code")), Role.MEMBER);
    }

    private record TypePage(FormReader form) {}

    private void type(Context ctx) {
        String typed = ctx.queryParam("code");
        if (typed == null) {
            Respond.page(ctx, "label/open.peb", new TypePage(new FormReader(Map.of())));
        } else {
            open(ctx, typed);
        }
    }

    private void open(Context ctx, String typed) {
        FormReader form = new FormReader(Map.of("code", List.of(typed)));
        Decision<ShortCode> decision = ShortCode.typed(typed);
        if (decision instanceof Decision.Done<ShortCode> code) {
            Optional<String> address = codes.address(code.value());
            if (address.isPresent()) {
                ctx.redirect(address.get(), HttpStatus.SEE_OTHER);
                return;
            }
            form.refuse("code", SAY.codeUnknown(code.value().spaced()));
            ctx.status(HttpStatus.NOT_FOUND);
        } else {
            form.refuse("code", Decisions.words(decision, Visitor.of(ctx).units()));
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Respond.page(ctx, "label/open.peb", new TypePage(form));
    }
}
