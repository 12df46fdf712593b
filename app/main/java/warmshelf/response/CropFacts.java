package warmshelf.response;

import static warmshelf.response.ResponseSentences.SAY;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.CropHazard;
import warmshelf.crop.PlantingOutWords;
import warmshelf.crop.SourceMatter;
import warmshelf.crop.TreatmentWords;
import warmshelf.words.Units;

/** What is known of a crop besides warmth, as its page lists it; beside each figure that was changed, the reference's. */
final class CropFacts {
    private static final String UNKNOWN = SAY.notKnown();

    private CropFacts() {}

    /**
     * One line.
     *
     * @param reference what the reference says, where that is something else; null where it is the same
     * @param sources the range over extension services, where they go beyond the figure; else empty
     */
    public record Fact(String label, String words, @Nullable String reference, String sources) {}

    /** @param reference the reference's row, where the group wrote another over it */
    static List<Fact> of(Crop crop, Optional<Crop> reference, Units units) {
        List<Fact> facts = new ArrayList<>();
        SourceWords sources = new SourceWords(units);
        add(
                facts,
                SAY.cold(),
                crop,
                reference,
                each -> each.hardiness().words(),
                sources.range(crop, SourceMatter.HARDINESS));
        add(
                facts,
                SAY.plantingOut(),
                crop,
                reference,
                CropFacts::plantingOut,
                sources.range(crop, SourceMatter.PLANTING_OUT));
        add(facts, SAY.nights(), crop, reference, each -> nights(each, units));
        add(
                facts,
                SAY.weeksIndoors(),
                crop,
                reference,
                CropFacts::weeks,
                sources.range(crop, SourceMatter.WEEKS_INDOORS));
        add(facts, SAY.depth(), crop, reference, each -> depth(each, units), depthAndLight(sources, crop));
        add(facts, SAY.beforeSowing(), crop, reference, each -> treatment(each, units));
        add(facts, SAY.canHurt(), crop, reference, CropFacts::hazards);
        add(facts, SAY.firstHarvest(), crop, reference, each -> harvest(each.maturity()));
        add(facts, SAY.seedKeeps(), crop, reference, CropFacts::keeps);
        return facts;
    }

    private static void add(
            List<Fact> facts, String label, Crop crop, Optional<Crop> reference, Function<Crop, String> words) {
        add(facts, label, crop, reference, words, "");
    }

    private static void add(
            List<Fact> facts,
            String label,
            Crop crop,
            Optional<Crop> reference,
            Function<Crop, String> words,
            String sources) {
        String here = words.apply(crop);
        facts.add(new Fact(
                label,
                here,
                reference.map(words).filter(there -> !there.equals(here)).orElse(null),
                sources));
    }

    private static String depthAndLight(SourceWords sources, Crop crop) {
        return Stream.of(SourceMatter.DEPTH, SourceMatter.LIGHT)
                .map(matter -> sources.range(crop, matter))
                .filter(range -> !range.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String treatment(Crop crop, Units units) {
        String words = new TreatmentWords(units).of(crop.treatment());
        return words.isEmpty() ? UNKNOWN : words;
    }

    private static String hazards(Crop crop) {
        if (crop.hazards().isEmpty()) {
            // What a coordinator left unticked is not what a list says.
            boolean lookedUp =
                    CropCatalogue.bundled().find(crop.id()).filter(crop::equals).isPresent()
                            && !CropCatalogue.bundled().hazardClaims(crop.id()).isEmpty();
            return lookedUp ? SAY.noneInLists() : SAY.notLookedUp();
        }
        return Arrays.stream(CropHazard.values())
                .filter(crop.hazards()::contains)
                .map(CropHazard::title)
                .collect(Collectors.joining("; "));
    }

    private static String plantingOut(Crop crop) {
        return PlantingOutWords.of(crop.plantOutOffsetDays(), crop.plantOutOffsetDaysLatest());
    }

    private static String nights(Crop crop, Units units) {
        return crop.nightMinimumC() == null ? UNKNOWN : SAY.above(units.temperature(crop.nightMinimumC()));
    }

    private static String weeks(Crop crop) {
        return crop.weeksIndoorsMin() == crop.weeksIndoorsMax()
                ? String.valueOf(crop.weeksIndoorsMin())
                : SAY.fromTo(crop.weeksIndoorsMin(), crop.weeksIndoorsMax());
    }

    private static String depth(Crop crop, Units units) {
        String depth = crop.depthMm() == null
                ? SAY.depthUsual()
                : crop.depthMm() == 0 ? SAY.onTheSurface() : units.length(crop.depthMm());
        return switch (crop.light()) {
            case NEEDED -> SAY.needsLight(depth);
            case DARK -> SAY.wantsDark(depth);
            case INDIFFERENT, NOT_KNOWN -> depth;
        };
    }

    /** In words, such as '70 to 80 days from planting out'. */
    static String harvest(Optional<DaysToMaturity> maturity) {
        return maturity.map(DaysToMaturity::words).orElse(UNKNOWN);
    }

    private static String keeps(Crop crop) {
        Integer years = crop.seedLifeYears();
        return years == null ? UNKNOWN : SAY.keepsYears(years);
    }
}
