package warmshelf.tablet;

import static warmshelf.tablet.TabletSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Decision;
import warmshelf.group.LinkPurpose;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Where coordinators make tablets, see when each was seen last, and end one that is lost. */
final class TabletPages implements Pages {
    private static final String ADDRESS = "/tablets";
    private static final String TEMPLATE = "tablet/tablets.peb";

    private final TabletStore tablets;
    private final BrowserSession browsers;
    private final Function<String, QrDrawing> code;

    /** @param code draws an address */
    TabletPages(TabletStore tablets, BrowserSession browsers, Function<String, QrDrawing> code) {
        this.tablets = tablets;
        this.browsers = browsers;
        this.code = code;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.COORDINATOR);
        routes.post(ADDRESS, this::make, Role.COORDINATOR);
        routes.post(ADDRESS + "/{id}/link", this::makeLink, Role.COORDINATOR);
        routes.post(ADDRESS + "/{id}/end", this::end, Role.COORDINATOR);
    }

    /** A link just made, which is shown this once. */
    private record Fresh(String name, String address, QrDrawing code) {}

    /**
     * @param fresh null: none was just made
     * @param onlyHere the address, where it leads to this machine only; else empty
     */
    private record TabletsPage(
            FormReader form,
            List<Choice> sites,
            List<Tablet> tablets,
            @Nullable Fresh fresh,
            String onlyHere) {}

    private void show(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of()), null));
    }

    private void make(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        TabletForm form = new TabletForm(ctx.formParamMap(), tablets.sites());
        Optional<TabletForm.Wanted> wanted = form.wanted();
        if (wanted.isEmpty()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form.reader(), null));
            return;
        }
        String name = wanted.get().name();
        Decision<String> made = tablets.make(name, wanted.get().site(), visitor.memberId());
        if (made instanceof Decision.Refused<String> refused) {
            form.reader().refuse("name", refused.reason().words(visitor.units()));
            Respond.again(ctx, TEMPLATE, page(ctx, form.reader(), null));
            return;
        }
        showLink(ctx, name, Decisions.doneOr(made, visitor.units()));
    }

    private void makeLink(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID id = Respond.id(ctx, "id");
        TabletStore.Fresh fresh = Decisions.doneOr(tablets.makeLink(id, visitor.memberId()), visitor.units());
        showLink(ctx, fresh.name(), fresh.token());
    }

    /** In the answer itself: the link is not kept, so that no later page could show it. */
    private void showLink(Context ctx, String name, String token) {
        String address = browsers.wholeAddress(ctx, LinkPurpose.TABLET.address(token));
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of()), new Fresh(name, address, code.apply(address))));
    }

    private void end(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        String name = Decisions.doneOr(tablets.end(Respond.id(ctx, "id"), visitor.memberId()), visitor.units());
        Respond.seeOther(ctx, ADDRESS, SAY.endedNow(name));
    }

    private TabletsPage page(Context ctx, FormReader form, @Nullable Fresh fresh) {
        return new TabletsPage(
                form,
                tablets.sites(),
                tablets.all(Visitor.of(ctx).zone()),
                fresh,
                browsers.addressOfThisMachineOnly(ctx).orElse(""));
    }
}
