package warmshelf.tablet;

import static warmshelf.tablet.TabletSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Objects;
import java.util.UUID;
import warmshelf.group.DoorPages;
import warmshelf.group.Link;
import warmshelf.group.LinkPurpose;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.words.Units;

/** Opening a tablet by its link, once. */
final class TabletDoorPages implements Pages {
    private final TabletStore tablets;
    private final DoorPages door;
    private final BrowserSession browsers;

    TabletDoorPages(TabletStore tablets, DoorPages door, BrowserSession browsers) {
        this.tablets = tablets;
        this.door = door;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: the link's token is the right.
        routes.get("/tablet/{token}", this::ask, Role.ANYONE);
        routes.post("/tablet/{token}", this::open, Role.ANYONE);
    }

    private record TabletLinkPage(Link link) {}

    // Programs that look into links, as those that read codes do, leave it open: only the button uses it up.
    private void ask(Context ctx) {
        Respond.page(ctx, "tablet/open.peb", new TabletLinkPage(door.openLink(ctx, LinkPurpose.TABLET)));
    }

    private void open(Context ctx) {
        Link link = door.openLink(ctx, LinkPurpose.TABLET);
        UUID id = Objects.requireNonNull(link.memberId());
        browsers.letIn(ctx, Decisions.doneOr(tablets.open(link, id), Units.METRIC));
        door.noteComingIn(ctx, id, "the link of a tablet");
        Respond.seeOther(ctx, "/today", SAY.opened(link.note()));
    }
}
