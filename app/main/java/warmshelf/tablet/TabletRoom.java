package warmshelf.tablet;

import java.util.List;
import java.util.function.Function;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.AdmissionStore;
import warmshelf.group.DoorPages;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.web.BrowserSession;
import warmshelf.web.LookerCookie;
import warmshelf.web.Pages;
import warmshelf.web.WebSettings;

/** Tablets at the racks, wired. */
public final class TabletRoom {
    private TabletRoom() {}

    /**
     * The pages, wired.
     *
     * @param code draws an address
     */
    public static List<Pages> pages(
            Database database,
            Audit audit,
            MemberStore members,
            LinkStore links,
            AdmissionStore admissions,
            DoorPages door,
            BrowserSession browsers,
            Function<String, QrDrawing> code) {
        TabletStore tablets = new TabletStore(database, audit, members, links, admissions);
        return List.of(new TabletPages(tablets, browsers, code), new TabletDoorPages(tablets, door, browsers));
    }

    /** What pages at which something is ticked ask for. */
    public static TabletReachPages reach(Database database, WebSettings web) {
        return new TabletReachPages(new TabletReachStore(database.sql()), new LookerCookie(web.https()));
    }
}
