package warmshelf.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.label.paper.QrSquare;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;

/** Everything that can be printed, each one press away; and the poster. */
final class PaperPages implements Pages {
    private final BrowserSession browsers;

    PaperPages(BrowserSession browsers) {
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/paper", ctx -> Respond.page(ctx, "paper/index.peb"), Role.MEMBER);
        routes.get("/paper/poster", this::poster, Role.MEMBER);
    }

    /**
     * The poster.
     *
     * @param picture of the group's address; null: no other device can open the address there is
     */
    private record PosterPage(String address, @Nullable QrSquare picture) {}

    private void poster(Context ctx) {
        String address = browsers.wholeAddress(ctx, "");
        Optional<String> unreachable = browsers.addressOfThisMachineOnly(ctx);
        Respond.page(
                ctx,
                "paper/poster.peb",
                new PosterPage(address, unreachable.isPresent() ? null : QrSquare.alone(address)));
    }
}
