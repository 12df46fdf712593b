package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import warmshelf.BadInput;
import warmshelf.Output;
import warmshelf.words.Numbers;

/** {@code emerge CROP TEMP_C}: when seed of a crop is expected to come up at a temperature. */
@Command(
        name = "emerge",
        description = "When seed of a crop is expected to come up at a temperature.",
        footerHeading = "%n",
        footer = {
            "Prints crop, temperatureC, emerges, days, days5, days95, normalShare, bestC, comfortableC,"
                    + " possibleC, source, basis and note. days: half of what comes up is up by then; days5 and days95: one"
                    + " twentieth and all but one twentieth. basis: what the days rest on (trial, stated range, published"
                    + " range), or why there are none (days not published, nothing grew, not tested). Below zero: emerge"
                    + " pepper -2 works."
        },
        mixinStandardHelpOptions = true)
public final class EmergeCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "CROP", description = "A crop's id, such as pepper.")
    private String cropId = "";

    @Parameters(index = "1", paramLabel = "TEMP_C", description = "Temperature of the mix in degrees Celsius.")
    private String temperature = "";

    @Override
    public Integer call() {
        CropCatalogue catalogue = CropCatalogue.bundled();
        Crop crop = catalogue.find(cropId).orElseThrow(() -> unknown(catalogue));
        Output.json(answer(crop, catalogue.responseOf(crop), celsius()));
        return 0;
    }

    private static Map<String, @Nullable Object> answer(Crop crop, TemperatureResponse response, double celsius) {
        Prospect prospect = response.prospect(celsius);
        Optional<Emergence> emergence = prospect.emergence();
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("crop", crop.id());
        answer.put("temperatureC", celsius);
        answer.put("emerges", prospect.comesUp());
        answer.put("days", emergence.map(e -> hundredths(e.days())).orElse(null));
        answer.put("days5", emergence.map(e -> hundredths(e.days5())).orElse(null));
        answer.put("days95", emergence.map(e -> hundredths(e.days95())).orElse(null));
        answer.put("normalShare", share(prospect));
        answer.put("bestC", response.bestC());
        answer.put("comfortableC", ends(response.comfortable()));
        answer.put("possibleC", ends(response.possible()));
        answer.put("source", response.source());
        answer.put("basis", ProspectWords.basis(prospect));
        answer.put("note", ProspectWords.note(prospect));
        return answer;
    }

    private static @Nullable Double share(Prospect prospect) {
        OptionalDouble share = prospect instanceof Prospect.Untimed untimed
                ? untimed.share()
                : prospect.emergence().map(Emergence::normalShare).orElse(OptionalDouble.empty());
        return share.isPresent() ? (Double) (Math.round(share.getAsDouble() * 1e4) / 1e4) : null;
    }

    private static double hundredths(double days) {
        return Numbers.hundredths(days);
    }

    private static List<Double> ends(CelsiusRange range) {
        return List.of(range.low(), range.high());
    }

    private double celsius() {
        try {
            double celsius = Double.parseDouble(temperature);
            if (celsius >= -50 && celsius <= 100) {
                return celsius;
            }
        } catch (NumberFormatException notANumber) {
            // falls through to the sentence below, which covers both cases
        }
        throw new BadInput(SAY.temperatureUnfit(temperature));
    }

    private BadInput unknown(CropCatalogue catalogue) {
        String ids = String.join(", ", catalogue.all().stream().map(Crop::id).toList());
        return new BadInput(SAY.noSuchCrop(cropId, ids));
    }
}
