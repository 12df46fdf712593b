package warmshelf.backup;

import static warmshelf.backup.BackupSentences.SAY;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import warmshelf.BadInput;
import warmshelf.Output;
import warmshelf.db.DataFacts;

/** {@code check}: whether a data folder or a backup is whole, and how far it goes. */
@Command(
        name = "check",
        description =
                "Read a data folder or a backup whole and say how far it goes. Nothing is changed; of a folder a copy is"
                        + " read. Stop the server first, or check a backup.",
        footerHeading = "%n",
        footer = {
            "Prints whole, group, entries, lastEntryAt, version, changes, lastChangeAt, knownChanges (how many were known,"
                    + " by the folder's mark or by the backup), rows of each table, and problems as sentences.",
            "Exit status 1 where it is not whole."
        },
        mixinStandardHelpOptions = true)
public final class CheckCommand implements Callable<Integer> {
    @Option(names = "--data", paramLabel = "FOLDER", description = "The data folder.")
    private @Nullable Path data;

    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "A backup, instead of --data.")
    private @Nullable Path file;

    @Override
    public Integer call() throws IOException {
        if ((data == null) == (file == null)) {
            throw new BadInput(SAY.folderOrFile());
        }
        try (WorkFolder work = WorkFolder.anywhere()) {
            DataCheck check =
                    data == null ? DataCheck.ofBackup(file(), work.path()) : DataCheck.ofFolder(data, work.path());
            Output.json(answer(check));
            return check.whole() ? 0 : 1;
        }
    }

    private Path file() {
        if (file == null) {
            throw new BadInput(SAY.folderOrFile());
        }
        return file;
    }

    static Map<String, @Nullable Object> answer(DataCheck check) {
        DataFacts facts = check.facts();
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("whole", check.whole());
        answer.put("group", facts == null ? null : facts.group());
        answer.put("entries", facts == null ? null : facts.entries());
        answer.put("lastEntryAt", facts == null ? null : facts.lastEntryAt());
        answer.put("version", facts == null ? null : facts.version());
        answer.put("changes", facts == null ? null : facts.changes());
        answer.put("lastChangeAt", facts == null ? null : facts.lastChangeAt());
        answer.put("knownChanges", check.known().isPresent() ? check.known().getAsLong() : null);
        answer.put("rows", facts == null ? null : facts.rows());
        answer.put("problems", check.problems());
        return answer;
    }
}
