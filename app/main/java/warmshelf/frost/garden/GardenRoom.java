package warmshelf.frost.garden;

import java.util.List;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.web.Pages;

/** What people themselves know of frost, wired. */
public final class GardenRoom {
    private GardenRoom() {}

    public static List<Pages> pages(Database database, Audit audit) {
        GardenStore gardens = new GardenStore(database, audit);
        CorrectionStore corrections = new CorrectionStore(database, audit);
        ThermometerStore thermometers = new ThermometerStore(database, audit);
        return List.of(
                new GardenPages(gardens, corrections, new AcceptedRiskStore(database, audit)),
                new AreaPages(corrections),
                new ThermometerPages(thermometers, gardens),
                new NightPages(thermometers, new NightStore(database, audit)));
    }
}
