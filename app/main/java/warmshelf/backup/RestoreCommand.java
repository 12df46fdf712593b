package warmshelf.backup;

import static warmshelf.backup.BackupSentences.SAY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import warmshelf.BadInput;
import warmshelf.DatabasePlace;
import warmshelf.Output;
import warmshelf.db.DataFacts;
import warmshelf.db.Database;

/** {@code restore}: brings a backup back into a data folder. */
@Command(
        name = "restore",
        description =
                "Bring a backup back into a data folder. Stop the server first. The backup is read whole and counted"
                        + " before anything is changed.",
        footerHeading = "%n",
        footer = {
            "Prints group, entries, lastEntryAt, version, changes, lastChangeAt, rows, and setAside: the folder to which what"
                    + " was there went, if something was.",
            "What was done after the backup was made is not in it. Everybody signs in as they did then."
        },
        mixinStandardHelpOptions = true)
public final class RestoreCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "The backup.")
    private Path file;

    @Option(names = "--data", paramLabel = "FOLDER", required = true, description = "The data folder.")
    private Path data;

    @Option(
            names = "--replace",
            description = "Put it in place of what is there, which is set aside in a folder of its own, not deleted.")
    private boolean replace;

    @Override
    public Integer call() throws IOException {
        boolean taken = isTaken();
        if (taken && !replace) {
            throw new BadInput(SAY.dataThere(data.toString()));
        }
        Files.createDirectories(data);
        try (WorkFolder work = WorkFolder.in(data, "restoring-")) {
            DataCheck check = DataCheck.ofBackup(file, work.path());
            DataFacts facts = check.facts();
            if (!check.whole() || facts == null) {
                throw new BadInput(
                        SAY.backupNotWhole(file.toString(), check.problems().get(0)));
            }
            // brings its tables up to date and notes how far it goes; refused where a newer program wrote it
            DatabasePlace.inFolder("--data", work.path()).open().close();
            @Nullable Path aside = taken ? setAside() : null;
            Database.move(work.path(), data);
            Output.json(answer(facts, aside));
        }
        return 0;
    }

    /** Whether data are there, or were. A file of them that is damaged counts as well. */
    private boolean isTaken() throws IOException {
        if (!ClosedData.hasData(data)) {
            return Files.exists(data.resolve(Database.MARK));
        }
        ClosedData.in(data)
                .orElseThrow(() -> new BadInput(SAY.inUse(data.toString())))
                .close();
        return true;
    }

    private Path setAside() throws IOException {
        String now = Clock.systemUTC().instant().truncatedTo(ChronoUnit.SECONDS).toString();
        Path aside = Files.createDirectory(data.resolve("replaced-" + now.replace(":", "")));
        for (String name : new String[] {Database.FILE, Database.MARK}) {
            if (Files.exists(data.resolve(name))) {
                Files.move(data.resolve(name), aside.resolve(name));
            }
        }
        return aside;
    }

    private static Map<String, @Nullable Object> answer(DataFacts facts, @Nullable Path aside) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("group", facts.group());
        answer.put("entries", facts.entries());
        answer.put("lastEntryAt", facts.lastEntryAt());
        answer.put("version", facts.version());
        answer.put("changes", facts.changes());
        answer.put("lastChangeAt", facts.lastChangeAt());
        answer.put("rows", facts.rows());
        answer.put("setAside", aside == null ? null : aside.toString());
        return answer;
    }
}
