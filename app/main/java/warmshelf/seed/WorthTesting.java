package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.LotUse.Meant;
import warmshelf.words.Counted;

/**
 * Which lots are worth testing before the season, and why: those first whose doubt costs the most seed for what members mean to
 * sow, then the largest of the rest.
 */
final class WorthTesting {
    static final int SHOWN = 5;
    /** A test of ten should leave most of a lot. */
    static final int FEWEST_SEEDS = 30;
    // Within so many tenths of all, a test would not change what anybody does.
    private static final double NARROW = 0.25;
    // Reading every lot of a large box takes long; beyond the largest there is little to save.
    private static final int LARGEST_LOOKED_AT = 20;

    private final CropCatalogue crops;
    private final int season;
    private final LotEvidence evidence;

    WorthTesting(CropCatalogue crops, int season, LotEvidence evidence) {
        this.crops = crops;
        this.season = season;
        this.evidence = evidence;
    }

    /** The lots whose test may matter: all that members mean to sow, and the largest others. */
    static List<Lot> candidates(List<Lot> lots, Map<UUID, Meant> meant) {
        List<Lot> large = lots.stream().filter(WorthTesting::hasEnough).toList();
        List<Lot> wanted =
                large.stream().filter(lot -> meant.containsKey(lot.id())).toList();
        List<Lot> others = large.stream()
                .filter(lot -> !meant.containsKey(lot.id()))
                .sorted(Comparator.comparingInt(WorthTesting::size).reversed())
                .limit(LARGEST_LOOKED_AT)
                .toList();
        return java.util.stream.Stream.concat(wanted.stream(), others.stream()).toList();
    }

    /** The lots in order, each with its reason; at most {@value #SHOWN}. */
    List<Suggestion> of(List<Lot> candidates, Map<UUID, Meant> meant) {
        return candidates.stream()
                .flatMap(lot -> suggestion(lot, meant.get(lot.id())).stream())
                .sorted(Comparator.comparing((Suggestion suggestion) -> !suggestion.isMeant())
                        .thenComparing(
                                Comparator.comparingDouble(Suggestion::weight).reversed()))
                .limit(SHOWN)
                .toList();
    }

    private Optional<Suggestion> suggestion(Lot lot, @Nullable Meant meant) {
        Crop crop = crops.orUnlisted(lot.cropId());
        SeedExpectation expectation = lot.expectation(crop, evidence.all(lot), season);
        GerminationShare share = expectation.share();
        ShareInterval range = share.interval(0.9);
        double width = range.high() - range.low();
        if (width < NARROW) {
            return Optional.empty();
        }
        String between = SAY.anythingBetween(Math.round(100 * range.low()), Math.round(100 * range.high()));
        if (meant == null) {
            return Optional.of(new Suggestion(
                    lot.id(),
                    crop.name(),
                    lot.variety(),
                    false,
                    width * size(lot),
                    lot.seedsLeft() == null ? SAY.worthNotCounted(between) : SAY.worthSeeds(between, lot.seedsLeft())));
        }
        long fewest = Math.round(meant.plants() / range.high());
        long most = Math.round(meant.plants() / Math.max(0.01, range.low()));
        long asked = SeedNeed.MOST_TIMES
                * Math.round(meant.plants() / expectation.unaged().mean());
        return Optional.of(new Suggestion(
                lot.id(),
                crop.name(),
                lot.variety(),
                true,
                Math.min(most, asked) - fewest,
                most <= asked
                        ? SAY.worthAtWorst(between, Counted.of(meant.plants(), "plant", "plants"), fewest, most)
                        : SAY.worthMoreAtWorst(between, Counted.of(meant.plants(), "plant", "plants"), fewest, asked)));
    }

    private static boolean hasEnough(Lot lot) {
        return lot.seedsLeft() == null || lot.seedsLeft() >= FEWEST_SEEDS;
    }

    /** Seeds nobody counted stand for a usual packet. */
    private static int size(Lot lot) {
        return lot.seedsLeft() == null ? FEWEST_SEEDS : lot.seedsLeft();
    }

    /**
     * A lot worth testing.
     *
     * @param isMeant whether members mean to sow of it
     * @param weight the doubt in seeds, for the order
     */
    public record Suggestion(UUID id, String crop, String variety, boolean isMeant, double weight, String why) {}
}
