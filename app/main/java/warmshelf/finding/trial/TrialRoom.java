package warmshelf.finding.trial;

import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Pages;

/** Side-by-side trials, wired. */
public final class TrialRoom {
    private TrialRoom() {}

    public static List<Pages> pages(SowingStores stores) {
        Trials trials = new Trials(stores);
        return List.of(new TrialDeclarePages(trials), new TrialPages(trials));
    }
}
