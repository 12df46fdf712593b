package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.WarmDays;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** What the board's script is told a move would come to. */
final class MoveAnswer {
    private MoveAnswer() {}

    static Map<String, Object> of(
            LyingStay stay, MoveOutlook outlook, Units units, boolean lightFollows, List<String> warnings) {
        return Map.of(
                "fits", outlook.fits(),
                "same", outlook.same(),
                "version", stay.stay().version(),
                "now",
                        words(
                                stay.stay().where(),
                                stay.stay().from(),
                                stay.stay().to(),
                                stay.warm(),
                                units),
                "then",
                        words(
                                        outlook.place().whereWith(outlook.spot().slot()),
                                        outlook.spot().from(),
                                        outlook.spot().to(),
                                        outlook.warm(),
                                        units)
                                + (lightFollows ? "; " + SAY.lightFollows() : ""),
                "clashes", outlook.clashes(units),
                "warnings", warnings,
                "key", outlook.key());
    }

    /** Where something would lie, on which days and how warm. */
    static String words(String where, LocalDate from, LocalDate to, @Nullable WarmDays warm, Units units) {
        return "%s, %s%s".formatted(where, DayWords.span(from, to), warm == null ? "" : ", " + words(warm, units));
    }

    /** For example '26 °C, from Tue 9 Mar 28 °C'. */
    private static String words(WarmDays warm, Units units) {
        return warm.runs().stream()
                .map(run -> (run.from().equals(warm.from()) ? "" : "from " + DayWords.day(run.from()) + " ")
                        + units.temperature(run.celsius()))
                .collect(Collectors.joining(", "));
    }
}
