package warmshelf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import warmshelf.db.Database;

/** Large groups are made once a day and kept below the build's folder; each run gets a copy. */
final class KeptBenchGroup {
    private static final Path KEPT = Path.of("target", "bench-groups");
    private static final String SESSIONS = "sessions.txt";

    private KeptBenchGroup() {}

    /** Puts the group into a folder, made before or now. */
    static BenchGroup copyInto(Path folder, BenchGroup.Size size) throws IOException {
        LocalDate today = LocalDate.now(BenchGroup.ZONE);
        Path kept = KEPT.resolve("%d-members-%d-seasons-%s".formatted(size.members(), size.seasons(), today));
        if (!Files.exists(kept.resolve(SESSIONS))) {
            make(kept, today, size);
        }
        Files.copy(kept.resolve(Database.FILE), folder.resolve(Database.FILE));
        Files.copy(kept.resolve(Database.MARK), folder.resolve(Database.MARK));
        List<String> lines = Files.readAllLines(kept.resolve(SESSIONS));
        return new BenchGroup(lines.get(0), lines.get(1), lines.get(2), lines.get(3));
    }

    private static void make(Path kept, LocalDate today, BenchGroup.Size size) throws IOException {
        Files.createDirectories(kept);
        Files.deleteIfExists(kept.resolve(Database.FILE));
        Files.deleteIfExists(kept.resolve(Database.MARK));
        try (Database database = Database.inFolder(kept)) {
            BenchGroup[] made = new BenchGroup[1];
            database.together(() -> made[0] = BenchGroup.fill(database, today, size));
            BenchGroup group = made[0];
            Files.write(
                    kept.resolve(SESSIONS),
                    List.of(group.memberSession(), group.onDutySession(), group.coordinatorSession(), group.words()));
        }
    }
}
