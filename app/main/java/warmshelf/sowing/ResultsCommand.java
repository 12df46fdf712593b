package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.Output;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** {@code results}: what sowings taught, worked out anew and held against what was kept. */
@Command(
        name = "results",
        description =
                "Work out anew, from all that was seen, what each sowing taught, and say whether what was kept of it was"
                        + " right; what was not is put right. Stop the server first.",
        footerHeading = "%n",
        footer = {
            "Prints right, missing and wrong: how many sowings each.",
            "Exit status 1 where something was missing or wrong."
        },
        mixinStandardHelpOptions = true)
public final class ResultsCommand implements Callable<Integer> {
    @Option(names = "--data", paramLabel = "FOLDER", required = true, description = "The group's data folder.")
    private Path data;

    @Override
    public Integer call() {
        if (!Files.exists(data.resolve(Database.FILE))) {
            throw new BadInput(SAY.noDataThere(data));
        }
        try (Database database = Settings.onFreePort(data).openDatabase()) {
            Audit audit = new Audit(Clock.systemUTC());
            SowingResultStore.Found found = new SowingResultStore(database, new EntryStore(audit), audit).rebuild();
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("right", found.kept());
            answer.put("missing", found.missing());
            answer.put("wrong", found.wrong());
            Output.json(answer);
            return found.missing() + found.wrong() == 0 ? 0 : 1;
        }
    }
}
