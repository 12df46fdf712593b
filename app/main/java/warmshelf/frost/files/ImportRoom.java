package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.time.Clock;
import java.util.List;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.web.Awaiting;
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

    /** Files that were read and are neither taken in nor given up. */
    public static Awaiting awaiting(Database database, Audit audit) {
        ImportStore imports = new ImportStore(database, audit);
        return coordinator -> imports.ready().stream()
                .filter(each -> coordinator.coordinator())
                .map(each -> new Awaiting.Matter(
                        SAY.fileReady(each.fileName()), each.startedBy(), ImportPages.ADDRESS + "/" + each.id(), false))
                .toList();
    }
}
