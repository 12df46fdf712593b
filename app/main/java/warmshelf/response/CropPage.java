package warmshelf.response;

import static warmshelf.response.ResponseSentences.SAY;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Emergence;
import warmshelf.crop.LearnedEmergence;
import warmshelf.crop.LearnedWords;
import warmshelf.crop.Method;
import warmshelf.crop.SeenEmergence;
import warmshelf.crop.TemperatureResponse;
import warmshelf.sowing.Sowing;
import warmshelf.words.Units;

/**
 * How one crop's seed answers to temperature, as its page shows it.
 *
 * @param timed the temperatures for which days are published, where those are fewer than the possible ones; else empty
 * @param days the published days at the best temperature, to a tenth; empty where no seed is expected to come up
 * @param learned what the group's sowings say; empty where there is nothing to compare them with
 * @param lots the same for each lot of which enough was seen
 * @param chart null where no days are published
 */
public record CropPage(
        Crop crop,
        TemperatureResponse response,
        String best,
        String comfortable,
        String possible,
        String timed,
        String days,
        String learned,
        List<Lot> lots,
        @Nullable ResponseChart chart,
        List<Row> rows) {

    /** A lot of the crop, with what its own sowings say. */
    public record Lot(UUID id, String variety, String learned) {}

    /**
     * One sowing of the table beneath the drawing.
     *
     * @param seen the days by which half had come, with the looks between which that was
     * @param drawnAt the days it is drawn at, which in a bag are more than those of its roots
     * @param table the published days at its temperature
     */
    public record Row(Sowing sowing, String temperature, String seen, String drawnAt, String table) {}

    static CropPage of(
            Crop crop, TemperatureResponse response, List<SeenEmergence> seen, Map<UUID, Sowing> sowings, Units units) {
        LearnedEmergence learned = LearnedEmergence.of(response, seen);
        Optional<Emergence> atBest = response.at(response.bestC());
        String best = units.temperature(response.bestC());
        List<SeenEmergence> inOrder = seen.stream()
                .filter(sowing -> response.timed().contains(sowing.celsius()))
                .sorted(Comparator.comparingDouble(SeenEmergence::celsius).thenComparing(SeenEmergence::seedlingDays))
                .toList();
        return new CropPage(
                crop,
                response,
                best,
                range(response.comfortable().low(), response.comfortable().high(), units),
                range(response.possible().low(), response.possible().high(), units),
                response.timed().equals(response.possible())
                        ? ""
                        : range(response.timed().low(), response.timed().high(), units),
                atBest.map(table -> LearnedWords.days(table.days())).orElse(""),
                atBest.map(table -> LearnedWords.ofCrop(learned, table.days(), best))
                        .orElse(""),
                atBest.map(table -> lots(learned, sowings, table.days(), best)).orElse(List.of()),
                atBest.isEmpty() ? null : new ChartDrawing(response, learned, inOrder, units).chart(),
                inOrder.stream()
                        .flatMap(each -> Optional.ofNullable(sowings.get(each.sowingId())).stream()
                                .map(sowing -> row(each, sowing, response, units)))
                        .toList());
    }

    private static List<Lot> lots(LearnedEmergence learned, Map<UUID, Sowing> sowings, double table, String best) {
        return sowings.values().stream()
                .filter(sowing -> learned.known(sowing.lotId()).isPresent())
                .map(sowing -> new Lot(
                        sowing.lotId(), sowing.variety(), LearnedWords.ofLot(learned, sowing.lotId(), table, best)))
                .distinct()
                .sorted(Comparator.comparing(Lot::variety).thenComparing(Lot::id))
                .toList();
    }

    private static Row row(SeenEmergence seen, Sowing sowing, TemperatureResponse response, Units units) {
        return new Row(
                sowing,
                units.temperature(seen.celsius()),
                seenWords(seen),
                LearnedWords.days(seen.seedlingDays()),
                response.at(seen.celsius())
                        .map(table -> LearnedWords.days(table.days()))
                        .orElse(""));
    }

    private static String seenWords(SeenEmergence seen) {
        String days = seen.method() == Method.BAG
                ? SAY.daysToRoots(LearnedWords.days(seen.days()))
                : SAY.daysToSeedlings(LearnedWords.days(seen.days()));
        String by = LearnedWords.days(seen.byDays());
        return seen.afterDays() == 0
                ? SAY.foundAtFirstLook(days, by)
                : SAY.foundBetween(days, LearnedWords.days(seen.afterDays()), by);
    }

    private static String range(double low, double high, Units units) {
        return low == high ? units.temperature(low) : units.temperatureRange(low, high);
    }
}
