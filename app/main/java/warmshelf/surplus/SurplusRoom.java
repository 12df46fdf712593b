package warmshelf.surplus;

import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** Seedlings to give away, wired. */
public final class SurplusRoom {
    private SurplusRoom() {}

    public static List<Pages> pages(SowingStores stores) {
        SurplusBookStore book = new SurplusBookStore(stores);
        SurplusStore store = new SurplusStore(stores);
        return List.of(new SurplusPages(book, store), new TakingPages(book, store));
    }

    /** What Today tells of them. */
    public static Aside today(SowingStores stores) {
        return new SurplusNews(new SurplusBookStore(stores));
    }
}
