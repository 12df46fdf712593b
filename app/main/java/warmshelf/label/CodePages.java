package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Codes to stick on racks, mats and trays: scanned or typed, each opens its page. */
public final class CodePages implements Pages {
    private final CodeStore codes;
    private final UnaryOperator<String> cropNames;
    private final BrowserSession browsers;

    /** Crops by their ids' names. */
    public CodePages(Database database, Audit audit, UnaryOperator<String> cropNames, BrowserSession browsers) {
        this.codes = new CodeStore(database, audit);
        this.cropNames = cropNames;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/code", this::type, Role.MEMBER);
        routes.get("/c/{code}", ctx -> open(ctx, ctx.pathParam("code")), Role.MEMBER);
        routes.get("/codes", this::standing, Role.MEMBER);
        routes.get("/codes/sowings", this::sowings, Role.MEMBER);
        routes.get("/codes/sowings/{id}", this::sowing, Role.MEMBER);
    }

    /** One label. */
    public record Label(String title, String where, ShortCode code, QrPicture picture) {}

    private record TypePage(FormReader form) {}

    /** @param address where the squares of the labels lead */
    private record SheetPage(String title, List<Label> labels, String address) {}

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

    private void standing(Context ctx) {
        sheet(ctx, SAY.racksAndMats(), codes.standing());
    }

    private void sowings(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        boolean all = "all".equals(ctx.queryParam("of"));
        sheet(
                ctx,
                all ? SAY.sowingsUnderWay() : SAY.mySowings(),
                all ? codes.allSowings(cropNames) : codes.sowingsOf(visitor.memberId(), cropNames));
    }

    private void sowing(Context ctx) {
        List<CodeStore.Subject> found = codes.sowing(Respond.id(ctx, "id"), cropNames);
        if (found.isEmpty()) {
            throw Refusal.notFound();
        }
        sheet(ctx, found.get(0).title(), found);
    }

    private void sheet(Context ctx, String title, List<CodeStore.Subject> subjects) {
        List<ShortCode> made = codes.codesOf(subjects, Visitor.of(ctx).memberId());
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < subjects.size(); i++) {
            ShortCode code = made.get(i);
            String address = browsers.wholeAddress(ctx, "/c/" + code.text());
            labels.add(new Label(subjects.get(i).title(), subjects.get(i).where(), code, QrPicture.of(address)));
        }
        Respond.page(ctx, "label/sheet.peb", new SheetPage(title, labels, browsers.wholeAddress(ctx, "")));
    }
}
