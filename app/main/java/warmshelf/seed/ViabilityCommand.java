package warmshelf.seed;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.StorageKind.Conditions;

/** {@code viability}: what is left of seed after years at one moisture and temperature. */
@Command(
        name = "viability",
        description = "How much of a crop's seed is alive after some years at a constant moisture and temperature.",
        footerHeading = "%n",
        footer = {
            "Prints crop, share, low, high, halfLifeYears, daysToLoseOneProbit, method (viability equation,"
                    + " or half-life by kind where no constants are published), species, source and note."
        },
        mixinStandardHelpOptions = true)
public final class ViabilityCommand implements Callable<Integer> {
    private static final int MOST_YEARS = 200;
    // Seed under known conditions may have aged one and a half times as fast as the equation says, or as slowly, in one
    // case of six each: a lognormal factor with the deviation of ln 1.5, of which this is the 90th hundredth.
    private static final double HASTE_OF_ONE_IN_TEN = 1.682;
    private static final String OF_ALL_KINDS =
            "no published constants for this crop: the half-life of crops in general, its packet life where a table has one,"
                    + " and Harrington's rules of thumb at two thirds for where it is kept";
    private static final String BY_KIND =
            "no published constants for this crop: its half-life in a room, with Harrington's rules of thumb at two thirds"
                    + " for where it is kept: ";

    @Option(names = "--crop", required = true, paramLabel = "CROP", description = "The crop's id, such as pepper.")
    private String cropId = "";

    @Option(names = "--years", required = true, paramLabel = "Y", description = "Years in storage, 0 to 200.")
    private String years = "";

    @Option(
            names = "--moisture",
            required = true,
            paramLabel = "PERCENT",
            description = "Moisture of the seed in %% of its fresh weight, 5 to 25: where the equation holds.")
    private String moisture = "";

    @Option(
            names = "--temperature",
            required = true,
            paramLabel = "C",
            description = "Degrees Celsius, -20 to 50: where the constants hold.")
    private String temperature = "";

    @Option(names = "--initial", paramLabel = "P", description = "Share alive at the start; usually ${DEFAULT-VALUE}.")
    private String initial = "0.95";

    @Override
    public Integer call() {
        Crop crop = CropCatalogue.bundled()
                .find(cropId)
                .orElseThrow(
                        () -> new BadInput("There is no crop '%s'; the ids stand in the crop table, such as pepper."
                                .formatted(Given.shown(cropId))));
        double stored = Given.decimal("--years", years, 0, MOST_YEARS);
        Conditions kept = new Conditions(
                Given.decimal("--temperature", temperature, Conditions.COLDEST, Conditions.WARMEST),
                Given.decimal("--moisture", moisture, Conditions.DRIEST, Conditions.DAMPEST));
        double start = Given.decimal("--initial", initial, 0.001, 0.9999);
        Optional<ViabilityEquation> equation = ViabilityTable.of(crop);
        Output.json(
                equation.isPresent()
                        ? byEquation(crop, stored, kept, start, equation.get())
                        : byHalfLife(crop, stored, kept, start));
        return 0;
    }

    private static Map<String, @Nullable Object> byEquation(
            Crop crop, double years, Conditions kept, double start, ViabilityEquation equation) {
        double halfLife = equation.halfLifeDays(start, kept) / ViabilityEquation.DAYS_A_YEAR;
        Map<String, @Nullable Object> answer =
                shares(crop, start, equation.loss(years, kept), HASTE_OF_ONE_IN_TEN, halfLife);
        answer.put("daysToLoseOneProbit", rounded(equation.daysToLoseOneProbit(kept)));
        answer.put("method", "viability equation");
        answer.put("species", equation.species());
        answer.put("source", equation.source() + ", " + equation.sourceUrl());
        answer.put(
                "note",
                "A band, not a date: predictions of this equation were often much higher than what became of stored seed"
                        + " (Frontiers in Plant Science 2020, 11:1007).");
        return answer;
    }

    private static Map<String, @Nullable Object> byHalfLife(Crop crop, double years, Conditions kept, double start) {
        HalfLife life = HalfLife.of(crop);
        SeedAgeing ageing = new SeedAgeing(life, StorageShift.of(kept));
        Map<String, @Nullable Object> answer =
                shares(crop, start, ageing.loss(years), ageing.hasteOfOneInTen(), ageing.halfLifeYears(start));
        answer.put("daysToLoseOneProbit", null);
        answer.put("method", "half-life by kind");
        answer.put("species", crop.species());
        answer.put("source", life.sources().isEmpty() ? OF_ALL_KINDS : BY_KIND + life.sources());
        answer.put("note", "A band, not a date: lots of one kind differ by a factor of two and more.");
        return answer;
    }

    /** The share, and what it would be had the seed aged so much faster or slower: eight times in ten it lies between. */
    private static Map<String, @Nullable Object> shares(
            Crop crop, double start, double loss, double haste, double halfLifeYears) {
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("crop", crop.id());
        answer.put("share", rounded(Probits.share(Probits.of(start) - loss)));
        answer.put("low", rounded(Probits.share(Probits.of(start) - loss * haste)));
        answer.put("high", rounded(Probits.share(Probits.of(start) - loss / haste)));
        answer.put("halfLifeYears", rounded(halfLifeYears));
        return answer;
    }

    private static double rounded(double figure) {
        return Math.round(figure * 1e6) / 1e6;
    }
}
