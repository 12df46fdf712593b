package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One row of the reference horticulture.
 *
 * @param plantOutOffsetDays days from the average last spring frost to the usual earliest planting out; negative: before it
 * @param plantOutOffsetDaysLatest the later end of the same usual range
 * @param nightMinimumC nights should stay above this before planting out
 * @param light what its seed wants until it is up
 * @param raisedFrom seed, or slips
 * @param treatment what its seed wants before it is sown
 * @param hazards what of it can hurt whoever handles it
 * @param maturity days to the first harvest where a source gives them
 * @param legalMinimumPercent minimum germination of vegetable seed in US trade
 * @param seedLifeYears years that well-kept seed usually lasts
 * @param commonPractice those of its figures that nobody has published
 * @param standing how far its source is to be trusted
 * @param note of whoever wrote the row, read by people only
 */
public record Crop(
        String id,
        String name,
        String species,
        Hardiness hardiness,
        int weeksIndoorsMin,
        int weeksIndoorsMax,
        int plantOutOffsetDays,
        int plantOutOffsetDaysLatest,
        @Nullable Double nightMinimumC,
        @Nullable Double depthMm,
        SeedLight light,
        RaisedFrom raisedFrom,
        SeedTreatment treatment,
        Set<CropHazard> hazards,
        Optional<DaysToMaturity> maturity,
        @Nullable Integer legalMinimumPercent,
        @Nullable Integer seedLifeYears,
        Set<CropFigure> commonPractice,
        String note,
        String source,
        String sourceUrl,
        Standing standing) {
    public Crop {
        hazards = Set.copyOf(hazards);
        commonPractice = Set.copyOf(commonPractice);
    }

    /**
     * A stand-in for a crop that was kept under an id which the reference does not have (any more): its name is that id, and
     * nothing else is known of it.
     */
    public static Crop unlisted(String id) {
        return new Crop(
                id,
                id,
                "",
                Hardiness.TENDER,
                0,
                0,
                0,
                0,
                null,
                null,
                SeedLight.NOT_KNOWN,
                RaisedFrom.SEED,
                SeedTreatment.UNKNOWN,
                Set.of(),
                Optional.empty(),
                null,
                null,
                Set.of(),
                "",
                "",
                "",
                Standing.PUBLISHED);
    }

    /** What can hurt whoever handles a lot of it. */
    public Set<CropHazard> hazardsOf(boolean treatedLot) {
        Set<CropHazard> all = EnumSet.noneOf(CropHazard.class);
        all.addAll(hazards);
        if (treatedLot) {
            all.add(CropHazard.TREATED);
        }
        return all;
    }

    /** The same crop with other days to the first harvest, those of a variety. */
    public Crop withMaturity(Optional<DaysToMaturity> other) {
        return new Crop(
                id,
                name,
                species,
                hardiness,
                weeksIndoorsMin,
                weeksIndoorsMax,
                plantOutOffsetDays,
                plantOutOffsetDaysLatest,
                nightMinimumC,
                depthMm,
                light,
                raisedFrom,
                treatment,
                hazards,
                other,
                legalMinimumPercent,
                seedLifeYears,
                commonPractice,
                note,
                source,
                sourceUrl,
                standing);
    }

    /** Whether each is sown in a pot that rots, and planted with it, because its roots bear no moving. */
    public boolean inOwnPot() {
        return UsualSowing.of(this).isPresent();
    }

    /**
     * Days to the first harvest, counted from planting out or from sowing.
     *
     * @param ofOneVariety whether they are those of one variety; else those of a crop's usual kinds, among which some are
     *     quicker
     */
    public record DaysToMaturity(int min, int max, Basis basis, boolean ofOneVariety) {
        /** Those of the usual kinds. */
        public DaysToMaturity(int min, int max, Basis basis) {
            this(min, max, basis, false);
        }

        /** The same days, known of one variety. */
        DaysToMaturity asOfOneVariety() {
            return new DaysToMaturity(min, max, basis, true);
        }

        /** For example '70 to 80 days from planting out'. */
        public String words() {
            return min == max
                    ? SAY.daysFrom(String.valueOf(min), basis.words())
                    : SAY.daysFrom(SAY.range(min, max), basis.words());
        }
    }

    /** The day from which days to the first harvest are counted. */
    public enum Basis {
        TRANSPLANTING("transplanting", SAY.plantingOut()),
        SOWING("sowing", SAY.sowing());

        private final String word;
        private final String words;

        Basis(String word, String words) {
            this.word = word;
            this.words = words;
        }

        public String word() {
            return word;
        }

        /** As in 'days from planting out'. */
        public String words() {
            return words;
        }

        /** The basis of that word. */
        public static Basis named(String word) {
            for (Basis basis : values()) {
                if (basis.word.equals(word)) {
                    return basis;
                }
            }
            throw new IllegalArgumentException("days are counted from transplanting or sowing, was '" + word + "'");
        }
    }
}
