package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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
import warmshelf.words.Units;

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
            answer.put("checks", checks(round, day));
            Output.json(answer);
        }
        return 0;
    }

    private static LocalDate today(GroupStore group) {
        return LocalDate.now(
                Clock.system(group.find().map(found -> found.profile().zone()).orElse(ZoneOffset.UTC)));
    }

    private static List<Map<String, @Nullable Object>> checks(Round round, LocalDate day) {
        List<Map<String, @Nullable Object>> checks = new ArrayList<>();
        for (Round.Stop stop : round.stops()) {
            Round.MatReading mat = stop.mat();
            if (mat != null) {
                checks.add(reading(stop, mat));
            }
            stop.items().forEach(item -> addChecks(checks, item, day));
        }
        round.elsewhere().forEach(item -> addChecks(checks, item, day));
        return checks;
    }

    private static Map<String, @Nullable Object> reading(Round.Stop stop, Round.MatReading mat) {
        Map<String, @Nullable Object> line = new LinkedHashMap<>();
        line.put("site", stop.site());
        line.put("rack", stop.rack());
        line.put("shelf", stop.shelf());
        line.put("place", null);
        line.put("sowing", null);
        line.put("crop", null);
        line.put("day", null);
        line.put("look", SAY.readThermometer(mat.name(), Units.METRIC.fineTemperature(mat.setPointC())));
        line.put("kind", CheckKind.MAT_READING.step().word());
        line.put("surface", stop.surface());
        line.put("done", mat.readC() != null);
        return line;
    }

    private static void addChecks(List<Map<String, @Nullable Object>> checks, Round.Item item, LocalDate day) {
        PlaceAddress address = item.address();
        for (Check check : item.checks()) {
            Map<String, @Nullable Object> line = new LinkedHashMap<>();
            line.put("site", address == null ? null : address.site());
            line.put("rack", address == null ? null : address.rack());
            line.put("shelf", address == null ? null : address.shelf());
            line.put("place", address == null ? null : address.number());
            line.put("sowing", item.subject().sowing().id().toString());
            line.put("crop", item.subject().sowing().crop().id());
            line.put("day", item.subject().dayCount(day));
            line.put("look", check.look(Units.METRIC));
            line.put("kind", check.kind().step().word());
            line.put("surface", address == null ? null : address.surface());
            line.put("variety", item.subject().sowing().variety());
            line.put("grower", item.subject().sowing().grower().name());
            line.put("ifSeen", check.ifSeen(Units.METRIC));
            line.put("caution", check.caution().isEmpty() ? null : check.caution());
            line.put("remark", check.remark() == null ? null : check.remarkWords(Units.METRIC));
            line.put("done", check.done());
            checks.add(line);
        }
    }
}
