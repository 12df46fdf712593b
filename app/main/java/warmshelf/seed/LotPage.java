package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.StorageKind.Conditions;
import warmshelf.words.Counted;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/**
 * What the page of one lot shows.
 *
 * @param kept how it is kept, in words
 * @param reckoned what the expectation starts from and how it ages
 * @param testDue what to sow until ten seeds are tested; null where no test is due
 * @param howToTest how this crop's seed is tested; null where no table tells
 * @param harvest days to the first harvest, in words; empty where nobody says
 * @param tests the newest first
 * @param newestSays what the newest test can and cannot say; null without one
 * @param results finished sowings of this lot, the newest first
 * @param terms on what terms others may plan on it, in words
 * @param holds what of it sowings will use, and where the lot falls short
 * @param changeable whether the reader may change it
 * @param takeable whether the reader may take of what is offered
 * @param triable whether the reader may declare a trial with it
 */
public record LotPage(
        LotWords lot,
        String kept,
        String reckoned,
        @Nullable TestDue testDue,
        @Nullable HowToTest howToTest,
        String harvest,
        String cropId,
        List<GerminationTest> tests,
        @Nullable String newestSays,
        List<GerminationTest> results,
        String terms,
        List<Held> holds,
        boolean changeable,
        boolean takeable,
        boolean triable) {
    /**
     * Seed of the lot that a sowing will use.
     *
     * @param lacking how many seeds the lot lacks for it
     */
    public record Held(SeedHold hold, int lacking) {}

    /**
     * Old seed of which a test should tell before more is sown.
     *
     * @param plants wanted, for example
     * @param sow seeds to sow for them meanwhile
     * @param probability chance of that many plants
     */
    public record TestDue(int plants, int sow, double probability) {
        private static final int PLANTS = 10;
        private static final double CONFIDENCE = 0.9;

        static Optional<TestDue> of(SeedExpectation expectation) {
            return SeedNeed.of(new SeedQuestion(PLANTS, CONFIDENCE, expectation.share(), 1, 1), expectation)
                    .filter(SeedNeed::testFirst)
                    .map(need ->
                            new TestDue(PLANTS, need.sow().seeds(), need.sow().probability()));
        }
    }

    static LotPage of(
            LotBalance balance,
            LotEvidence evidence,
            CropCatalogue crops,
            int season,
            Units units,
            boolean changeable,
            boolean takeable,
            boolean triable) {
        Lot lot = balance.lot();
        Crop crop = crops.orUnlisted(lot.cropId());
        List<GerminationTest> tests = evidence.tests(lot);
        return new LotPage(
                LotWords.of(balance, evidence, crops, season),
                kept(lot.storage(), units),
                reckoned(crop, lot),
                TestDue.of(lot.expectation(crop, evidence.all(lot), season)).orElse(null),
                crops.lists(crop) ? HowToTest.of(crop, crops.responseOf(crop)).orElse(null) : null,
                harvest(lot, crops),
                lot.cropId(),
                tests,
                tests.isEmpty() ? null : TestWords.of(tests.get(0)),
                evidence.results(lot),
                terms(balance),
                holds(balance),
                changeable,
                takeable,
                triable);
    }

    private static String terms(LotBalance balance) {
        int kept = balance.sharing().keptBack();
        String whom = balance.lot().ownerId() == null
                ? SAY.everybodyPlans()
                : balance.sharing().withoutAsking() ? SAY.othersTake() : SAY.othersAsk();
        return kept == 0 ? whom : SAY.termsKeptBack(whom, Counted.of(kept, "is", "are"));
    }

    private static List<Held> holds(LotBalance balance) {
        Map<UUID, Integer> lacking = balance.shortfalls().stream()
                .collect(Collectors.toMap(shortfall -> shortfall.hold().sowingId(), LotBalance.Shortfall::lacking));
        return balance.holds().stream()
                .map(hold -> new Held(hold, lacking.getOrDefault(hold.sowingId(), 0)))
                .toList();
    }

    private static String harvest(Lot lot, CropCatalogue crops) {
        String whose = crops.variety(lot.cropId(), lot.variety())
                .map(variety -> SAY.notedBy(variety.source(), variety.by()))
                .orElse(SAY.asTheCrop());
        return crops.ofVariety(lot.cropId(), lot.variety())
                .maturity()
                .map(days -> "%s (%s)".formatted(days.words(), whose))
                .orElse("");
    }

    private static String kept(Storage storage, Units units) {
        Optional<Conditions> conditions = storage.conditions();
        return conditions
                .map(kept -> storage.kind() == StorageKind.OWN
                        ? SAY.keptMeasured(units.temperature(kept.celsius()), Numbers.plain(kept.moisturePercent()))
                        : SAY.keptReckoned(
                                storage.kind().words(),
                                units.temperature(kept.celsius()),
                                Numbers.plain(kept.moisturePercent())))
                .orElse(SAY.nobodySaidHowKept());
    }

    private static String reckoned(Crop crop, Lot lot) {
        String start = crop.legalMinimumPercent() == null
                ? SAY.ownAssumption(Math.round(100 * FreshSeed.minimum(crop)))
                : SAY.seedLaw(crop.legalMinimumPercent());
        return lot.source() == SeedSource.PACKET
                ? SAY.packetsDoBetter(start, ageing(crop, lot.storage()))
                : SAY.lessOfSaved(start, ageing(crop, lot.storage()));
    }

    private static String ageing(Crop crop, Storage storage) {
        HalfLife life = HalfLife.of(crop);
        StorageShift kept = StorageShift.of(storage);
        String rests = life.sources().isEmpty() ? SAY.cropsInGeneral() : SAY.cropOrRelatives(life.sources());
        return storage.conditions().isPresent()
                ? SAY.ageingKept(years(life.years()), rests, years(life.years() * kept.times()))
                : SAY.ageingUnknown(years(life.years()), rests);
    }

    private static String years(double years) {
        return Counted.of(Math.max(1, Math.round(years)), "year", "years");
    }
}
