package warmshelf.frost.files;

import java.time.Clock;
import java.util.List;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.web.Pages;

/** Bringing in evidence of frost, wired. */
public final class ImportRoom {
    private ImportRoom() {}

    public static List<Pages> pages(Database database, Audit audit, Clock clock) {
        ImportStore imports = new ImportStore(database, audit);
        StationStore stations = new StationStore(database, audit);
        return List.of(
                new EvidencePages(imports, stations, clock),
                new ImportPages(imports, stations, new ImportJobs(imports), clock),
                new MonthlyPages(stations));
    }
}
