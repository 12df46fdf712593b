package warmshelf.bench;

import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.finding.season.SeasonFinding;
import warmshelf.finding.season.SeasonStore;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.sowing.Entry;
import warmshelf.sowing.SowingStores;

/**
 * What a season's findings cost: 200 members, 600 sowings, some 10,000 entries on H2. Processor time of the thread, so that a busy machine
 * does not blur it; the first reading, which also compiles, beside the median of those after it.
 */
public final class FindingBench {
    private static final LocalDate TODAY = LocalDate.of(2027, 6, 20);
    private static final int TIMES = 11;

    private FindingBench() {}

    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("warmshelf-finding-bench");
        BenchGroup.moveInto(folder, TODAY);
        try (Database database = Database.inFolder(folder)) {
            Audit audit = new Audit(Clock.systemUTC());
            SowingStores stores = SowingStores.over(database, audit, FrostSource.bundledOnly());
            SeasonStore seasons = new SeasonStore(database.sql(), stores.sowings(), stores.entries());
            int season = seasons.seasons().get(0);
            double[] millis = new double[TIMES];
            SeasonFinding finding = seasons.find(season);
            for (int i = 0; i < TIMES; i++) {
                long from = cpuNanos();
                finding = seasons.find(season);
                millis[i] = (cpuNanos() - from) / 1e6;
            }
            double first = millis[0];
            Arrays.sort(millis);
            System.out.printf(
                    "season %d: %d sowings, %d entries; report %.0f ms of processor time, %.0f ms early on%n",
                    season,
                    finding.totals().sown(),
                    seasons.sowings(season).stream()
                            .mapToInt(each -> each.entries().size())
                            .sum(),
                    millis[TIMES / 2],
                    first);
            System.out.printf("five such seasons: %.0f ms%n", 5 * millis[TIMES / 2]);
            table(seasons, season);
        }
    }

    private static void table(SeasonStore seasons, int season) throws IOException {
        System.gc();
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
        long before = used();
        int[] rows = {0};
        long from = cpuNanos();
        try (Writer out = Writer.nullWriter()) {
            seasons.forEachEntry(season, (Entry entry) -> {
                out.write(entry.note());
                rows[0]++;
            });
        }
        System.out.printf(
                "%d entries handed on in %.0f ms; heap %.1f MB before and %.1f MB after, once collected%n",
                rows[0], (cpuNanos() - from) / 1e6, before / 1e6, collected() / 1e6);
    }

    private static long collected() {
        System.gc();
        return used();
    }

    private static long used() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
