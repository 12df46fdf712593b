package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.crop.Soak;
import warmshelf.crop.TemperatureResponse;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads a trial as typed, or says at each field what cannot be used. */
final class TrialForm {
    static final int FEWEST_SEEDS = 2;
    /** A whole tray of the usual cells. */
    static final int MOST_SEEDS = 72;

    static final int MOST_BLOCKS = 4;
    private static final int DAYS_AHEAD = 250;
    private static final List<String> LETTERS = List.of("A", "B", "C");
    private static final double COLDEST_C = 0;
    private static final double HOTTEST_C = 50;

    private final FormReader reader;
    private final List<LotBalance> box;
    private final CropCatalogue crops;
    private final Who who;
    private final LocalDate today;
    private final Units units;

    /** Who fills it in. */
    record Who(UUID member, boolean coordinator) {}

    /** @param box all lots with seed, as they stand */
    TrialForm(
            Map<String, List<String>> typed,
            List<LotBalance> box,
            CropCatalogue crops,
            Who who,
            LocalDate today,
            Units units) {
        this.reader = new FormReader(typed);
        this.box = List.copyOf(box);
        this.crops = crops;
        this.who = who;
        this.today = today;
        this.units = units;
    }

    FormReader reader() {
        return reader;
    }

    /** What was asked for; empty where the reader has sentences. */
    Optional<TrialDesign> design() {
        Optional<LotBalance> balance = lot();
        String word = reader.choice("kind", "What differs", TrialKind.words());
        TrialKind kind = TrialKind.words().contains(word) ? TrialKind.named(word) : TrialKind.METHOD;
        int seedsEach = reader.wholeNumber("seedsEach", "Seeds of each way", FEWEST_SEEDS, MOST_SEEDS);
        int blocks = reader.wholeNumber("blocks", "Trays or bags of each way", who.coordinator() ? 0 : 1, MOST_BLOCKS);
        LocalDate sowOn = sowOn(reader, today, kind == TrialKind.SOAK);
        Method method = kind == TrialKind.METHOD ? Method.CELLS : method();
        if (balance.isEmpty()) {
            return Optional.empty();
        }
        Lot lot = balance.get().lot();
        Crop crop = crops.orUnlisted(lot.cropId());
        boolean soaks = crop.treatment().softens() && !lot.treated() && sowOn.isAfter(today);
        List<TrialWay> ways = ways(kind, method, crop, lot, soaks);
        if (!reader.ok()) {
            return Optional.empty();
        }
        TrialDesign design = new TrialDesign(kind, lot, ways, seedsEach, blocks, sowOn);
        requireSeeds(balance.get(), design);
        return reader.ok() ? Optional.of(design) : Optional.empty();
    }

    /** The day on which all ways of a block are sown; where seed is soaked, the evening before must still come. */
    static LocalDate sowOn(FormReader reader, LocalDate today, boolean soaked) {
        LocalDate day = reader.date("sowOn", "The day of sowing");
        LocalDate first = soaked ? today.plusDays(1) : today;
        LocalDate last = today.plusDays(DAYS_AHEAD);
        if (!reader.problems().containsKey("sowOn") && (day.isBefore(first) || day.isAfter(last))) {
            reader.refuse("sowOn", SAY.dayOutside(day.toString(), first.toString(), last.toString()));
        }
        return day;
    }

    private Optional<LotBalance> lot() {
        String typed = reader.text("lot");
        Optional<LotBalance> found = box.stream()
                .filter(balance -> balance.lot().id().toString().equals(typed))
                .findFirst();
        if (found.isEmpty()) {
            reader.refuse("lot", typed.isEmpty() ? SAY.lotEmpty() : SAY.lotUnknown());
        } else if (found.get().isAskedFor(who.member())) {
            Lot lot = found.get().lot();
            reader.refuse("lot", SAY.lotOfSomebody(lot.variety(), String.valueOf(lot.ownerName())));
            return Optional.empty();
        }
        return found;
    }

    private Method method() {
        List<String> words = List.of(Method.CELLS.word(), Method.BAG.word());
        String word = reader.text("method").isEmpty() ? Method.CELLS.word() : reader.choice("method", "Sown in", words);
        return words.contains(word) ? Method.named(word) : Method.CELLS;
    }

    /** @param soaks whether the seed of all ways is soaked, where that is not what differs */
    private List<TrialWay> ways(TrialKind kind, Method method, Crop crop, Lot lot, boolean soaks) {
        return switch (kind) {
            case METHOD ->
                List.of(
                        new TrialWay("A", Method.CELLS, true, null, soaks),
                        new TrialWay("B", Method.BAG, true, null, soaks));
            case HEAT ->
                List.of(new TrialWay("A", method, true, null, soaks), new TrialWay("B", method, false, null, soaks));
            case WARMTH -> warmths(method, crop, soaks);
            case SOAK -> {
                requireSoakable(crop, lot);
                yield List.of(
                        new TrialWay("A", method, true, null, true), new TrialWay("B", method, true, null, false));
            }
        };
    }

    private void requireSoakable(Crop crop, Lot lot) {
        if (lot.treated()) {
            reader.refuse("kind", SAY.neverSoakTreated(lot.variety()));
        } else if (crop.treatment().soak() == Soak.NEVER) {
            reader.refuse("kind", SAY.neverSoak(crop.name()));
        }
    }

    private List<TrialWay> warmths(Method method, Crop crop, boolean soaks) {
        List<TrialWay> ways = new ArrayList<>();
        for (String letter : LETTERS) {
            String field = "degrees" + letter;
            boolean needed = !letter.equals("C");
            if (needed || !reader.text(field).isEmpty()) {
                Integer celsius = celsius(field, letter, crop);
                if (celsius != null) {
                    requireOther(field, letter, celsius, ways);
                    ways.add(new TrialWay(letter, method, true, celsius, soaks));
                }
            }
        }
        return ways;
    }

    private @Nullable Integer celsius(String field, String letter, Crop crop) {
        int least = (int) units.degrees(COLDEST_C);
        int most = (int) units.degrees(HOTTEST_C);
        int typed = reader.wholeNumber(field, SAY.degreesOf(letter, units.degree()), least, most);
        if (reader.problems().containsKey(field)) {
            return null;
        }
        int celsius = (int) Math.round(units.celsiusOf((double) typed));
        TemperatureResponse response = crops.responseOf(crop);
        if (response.at(celsius).isEmpty()) {
            reader.refuse(
                    field,
                    SAY.degreesUnknown(
                            letter,
                            units.temperature(celsius),
                            crop.name(),
                            units.temperatureRange(
                                    response.timed().low(), response.timed().high())));
        }
        return celsius;
    }

    private void requireOther(String field, String letter, int celsius, List<TrialWay> others) {
        others.stream()
                .filter(other -> other.celsius() != null && other.celsius() == celsius)
                .findFirst()
                .ifPresent(same ->
                        reader.refuse(field, SAY.degreesAlike(letter, units.temperature(celsius), same.letter())));
    }

    private void requireSeeds(LotBalance balance, TrialDesign design) {
        Integer free = balance.freeFor(who.member());
        if (free == null || design.seeds() <= free) {
            return;
        }
        reader.refuse(
                "seedsEach",
                SAY.tooFewSeeds(
                        design.seedsEach(),
                        new BalanceWords(balance).forMember(who.member()),
                        design.seeds(),
                        free / (design.blocks() * design.ways().size())));
    }
}
