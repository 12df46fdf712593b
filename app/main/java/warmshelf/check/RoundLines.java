package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Units;

/** The round as programs read it: a line for each check, with the same fields from the command and over HTTP. */
public final class RoundLines {
    private RoundLines() {}

    /** Every check in walking order; what lies at members' homes comes last. */
    public static List<Map<String, @Nullable Object>> of(Round round, LocalDate day) {
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
        line.put("mat", mat.matId().toString());
        line.put("setPointCelsius", mat.setPointC());
        line.put("readCelsius", mat.readC());
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
