package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Decision;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Where people make and end the tokens of their scripts, and coordinators see and end everybody's. */
final class ProgramTokenPages implements Pages {
    private static final String ADDRESS = "/tokens";
    private static final String TEMPLATE = "program/tokens.peb";

    private final ProgramTokenStore tokens;
    private final BrowserSession browsers;

    ProgramTokenPages(ProgramTokenStore tokens, BrowserSession browsers) {
        this.tokens = tokens;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.MEMBER);
        routes.post(ADDRESS, this::make, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/revocation", this::revoke, Role.MEMBER);
    }

    /** A token just made, and a line that tries it. */
    private record Fresh(String token, String curl) {}

    /**
     * @param fresh null: none was just made
     * @param others those of other members, for coordinators
     * @param api where scripts come in
     */
    private record TokensPage(
            FormReader form,
            List<TokenScope> scopes,
            @Nullable Fresh fresh,
            List<ProgramToken> own,
            List<ProgramToken> others,
            String api) {}

    private void show(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of()), null));
    }

    /** The token is shown this once, in the answer itself: it is not kept, so no later page could show it. */
    private void make(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        ProgramTokenForm form = new ProgramTokenForm(ctx.formParamMap(), visitor.today());
        Optional<NewToken> wanted = form.token();
        if (wanted.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form.reader(), null));
            return;
        }
        Decision<String> made = tokens.make(visitor.memberId(), wanted.get());
        String token = Decisions.doneOr(made, visitor.units());
        Fresh fresh = new Fresh(token, CurlLine.asking(browsers.wholeAddress(ctx, ""), token));
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of()), fresh));
    }

    private void revoke(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        String name = tokens.revoke(Respond.id(ctx, "id"), visitor.memberId(), visitor.coordinator())
                .orElseThrow(() -> Refusal.notFound(SAY.noSuchToken()));
        Respond.seeOther(ctx, ADDRESS, SAY.revokedNow(name));
    }

    private TokensPage page(Context ctx, FormReader form, @Nullable Fresh fresh) {
        Visitor visitor = Visitor.of(ctx);
        return new TokensPage(
                form,
                List.of(TokenScope.values()),
                fresh,
                tokens.of(visitor.memberId(), visitor.zone()),
                visitor.coordinator() ? tokens.ofOthers(visitor.memberId(), visitor.zone()) : List.of(),
                browsers.wholeAddress(ctx, ProgramReadPages.PREFIX));
    }
}
