package warmshelf.paper;

import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;

/** What people print, wired. */
public final class PaperRoom {
    private PaperRoom() {}

    public static List<Pages> pages(SowingStores stores, BrowserSession browsers) {
        return List.of(new PaperPages(browsers), new GrowerSheetPages(stores));
    }
}
