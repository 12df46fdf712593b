package warmshelf.seed;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.GerminationShare.Uncertain;

/** {@code sow}: how many seeds to sow to end with the plants wanted. */
@Command(
        name = "sow",
        description = "How many seeds to sow to end with the plants wanted. One plant is kept in each cell.",
        footerHeading = "%n",
        footer = {
            "One of --share, --tested, or --crop with --year and --season is needed. --share is taken as"
                    + " known, --tested 17/20 as a test that could have come out otherwise.",
            "Prints seeds, cells, probability, share (mean, low, high) and perCell (k, atLeastOne), and testFirst:"
                    + " whether old seed should be tested before more of it is sown than this."
        },
        mixinStandardHelpOptions = true)
public final class SowCommand implements Callable<Integer> {
    private static final double INTERVAL = 0.9;

    private final Clock clock;

    @Option(names = "--want", required = true, paramLabel = "N", description = "Plants wanted, 1 to 5,000.")
    private String want = "";

    @Option(
            names = "--confidence",
            paramLabel = "C",
            description = "Wanted chance of that many; usually ${DEFAULT-VALUE}.")
    private String confidence = "0.9";

    @Option(names = "--tested", paramLabel = "G/N", description = "A test: G of N seeds came up.")
    private @Nullable String tested;

    @Option(names = "--share", paramLabel = "P", description = "The share that comes up, taken as known.")
    private @Nullable String share;

    @Option(names = "--crop", paramLabel = "CROP", description = "Untested seed: the crop's id ...")
    private @Nullable String cropId;

    @Option(names = "--year", paramLabel = "Y", description = "... the year on its packet ...")
    private @Nullable String year;

    @Option(names = "--season", paramLabel = "S", description = "... and the year of sowing; this year if not given.")
    private @Nullable String season;

    @Option(
            names = "--per-cell",
            paramLabel = "K",
            description = "Seeds to a cell; ${DEFAULT-VALUE} if not given, 2 are common practice.")
    private String perCell = "1";

    @Option(names = "--survival", paramLabel = "P", description = "Share of seedlings that live until planting out.")
    private String survival = "1";

    public SowCommand() {
        this(Clock.system(ZoneId.systemDefault()));
    }

    SowCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        SeedExpectation expectation = expectation();
        SeedQuestion question = new SeedQuestion(
                Given.whole("--want", want, 1, SeedQuestion.MOST_PLANTS),
                Given.decimal("--confidence", confidence, 0.01, 0.9999),
                expectation.share(),
                Given.decimal("--survival", survival, 0.01, 1),
                Given.whole("--per-cell", perCell, 1, SeedQuestion.MOST_PER_CELL));
        SeedNeed need = SeedNeed.of(question, expectation)
                .orElseThrow(() -> new BadInput(
                        "Not even %,d seeds would give %s plants with a confidence of %s: use another lot, or want fewer."
                                .formatted(SeedCount.MOST_CELLS, want, confidence)));
        Output.json(answer(question, need));
        return 0;
    }

    private static Map<String, Object> answer(SeedQuestion question, SeedNeed need) {
        SeedCount count = need.sow();
        ShareInterval interval = question.share().interval(INTERVAL);
        Map<String, Object> share = new LinkedHashMap<>();
        share.put("mean", rounded(question.share().mean()));
        share.put("low", rounded(interval.low()));
        share.put("high", rounded(interval.high()));
        Map<String, Object> cell = new LinkedHashMap<>();
        cell.put("k", question.perCell());
        cell.put("atLeastOne", rounded(count.atLeastOne()));
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("seeds", count.seeds());
        answer.put("cells", count.cells());
        answer.put("probability", rounded(count.probability()));
        answer.put("share", share);
        answer.put("perCell", cell);
        answer.put("testFirst", need.testFirst());
        return answer;
    }

    private static double rounded(double share) {
        return Math.round(share * 1e6) / 1e6;
    }

    private SeedExpectation expectation() {
        if (share != null) {
            if (tested != null || cropId != null) {
                throw new BadInput("--share takes the share as known, so it goes with neither --tested nor --crop.");
            }
            return SeedExpectation.known(GerminationShare.exactly(Given.decimal("--share", share, 0.001, 1)));
        }
        if (tested == null && cropId == null) {
            throw new BadInput(
                    "Nothing is said of the seed; give --tested 17/20, or --share 0.8, or --crop pepper --year 2025.");
        }
        SeedExpectation expected = cropId == null ? SeedExpectation.known(Uncertain.UNKNOWN) : expectedOf(cropId);
        return tested == null ? expected : SeedExpectation.known(afterTest((Uncertain) expected.share(), tested));
    }

    private SeedExpectation expectedOf(String id) {
        Crop crop = CropCatalogue.bundled()
                .find(id)
                .orElseThrow(
                        () -> new BadInput("There is no crop '%s'; the ids stand in the crop table, such as pepper."
                                .formatted(Given.shown(id))));
        int sowingYear = season == null ? LocalDate.now(clock).getYear() : Given.whole("--season", season, 2000, 2100);
        if (year == null) {
            if (tested == null) {
                throw new BadInput("--crop needs --year, the year on the packet, unless --tested is given.");
            }
            return ofPacket(crop, 0);
        }
        int packetYear = Given.whole("--year", year, 1950, 2100);
        if (packetYear > sowingYear) {
            throw new BadInput("--year was %d, later than the season %d; give --season %d, or an earlier year."
                    .formatted(packetYear, sowingYear, packetYear));
        }
        return ofPacket(crop, sowingYear - packetYear);
    }

    private static SeedExpectation ofPacket(Crop crop, int years) {
        return AgedSeed.expectation(crop, SeedSource.PACKET, Storage.UNKNOWN, years);
    }

    private static Uncertain afterTest(Uncertain expected, String tested) {
        String[] counts = tested.split("/", -1);
        if (counts.length != 2) {
            throw new BadInput("--tested was '%s'; seeds up of seeds tried, such as 17/20, is accepted."
                    .formatted(Given.shown(tested)));
        }
        int seeds = Given.whole("The seeds tried in --tested", counts[1], 1, GerminationTest.MOST_SEEDS);
        int germinated = Given.whole("The seeds up in --tested", counts[0], 0, seeds);
        return expected.afterTest(germinated, seeds);
    }
}
