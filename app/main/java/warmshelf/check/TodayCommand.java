package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.EvidenceStore;
import warmshelf.group.GroupStore;
import warmshelf.sowing.SowingStores;

/** Prints the round of a day as JSON, from the group's database. */
@Command(
        name = "today",
        description = "The round of a day in walking order, from the group's data folder. Stop the server first.",
        footerHeading = "%n",
        footer = {
            "Prints date and checks (each with site, rack, shelf, place, sowing, crop, day, look and more)"
                    + " in walking order."
        },
        mixinStandardHelpOptions = true)
public final class TodayCommand implements Callable<Integer> {
    @Option(names = "--data", paramLabel = "FOLDER", required = true, description = "The group's data folder.")
    private Path data;

    @Option(names = "--date", paramLabel = "DATE", description = "The day, such as 2027-03-01; today if not given.")
    private @Nullable String date;

    @Override
    public Integer call() {
        if (!Files.exists(data.resolve("warmshelf.mv.db"))) {
            throw new BadInput(SAY.noDataThere(data));
        }
        LocalDate asked = date == null ? null : Given.date("--date", date);
        try (Database database = Settings.onFreePort(data).openDatabase()) {
            Audit audit = new Audit(Clock.systemUTC());
            LocalDate day = asked != null ? asked : today(new GroupStore(database, audit));
            Round round = CheckRoom.rounds(SowingStores.over(database, audit, EvidenceStore.over(database, audit)))
                    .whole(day);
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("date", day);
            answer.put("checks", RoundLines.of(round, day));
            Output.json(answer);
        }
        return 0;
    }

    private static LocalDate today(GroupStore group) {
        return LocalDate.now(
                Clock.system(group.find().map(found -> found.profile().zone()).orElse(ZoneOffset.UTC)));
    }
}
