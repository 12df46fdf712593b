package warmshelf.supply;

import java.util.Optional;

/** Something a season's sowings need; volumes in millilitres, the rest in pieces. */
public enum SupplyItem {
    SOWING_COMPOST(
            "sowing-compost",
            "Seed compost",
            true,
            "Cells filled, and a tenth more for what settles and spills (common practice). Cell volumes are from memory and"
                    + " differ by a quarter between makers: fill one of your own with water and measure."),
    COVERING(
            "covering",
            "Vermiculite or perlite, to cover seed",
            true,
            "The crop's own sowing depth over the cells used, 6 mm at the most (common practice; deeper seed lies in its compost), and a dusting of 2 mm for"
                    + " seed that needs light (our assumption)."),
    POTTING_COMPOST(
            "potting-compost",
            "Potting compost",
            true,
            "For each pot of 9 cm (3.5 in) 0.4 litres (from memory), and a tenth more."),
    CELL_TRAYS(
            "cell-trays",
            "Cell trays, each with a tray beneath and a clear cover",
            false,
            "By the cells used, counted in half trays of standard size (about 53 by 27 cm; sources differ by a finger's width)."),
    ROTTING_POTS(
            "rotting-pots",
            "Pots that rot (peat, paper or coir), about 8 cm (3 in)",
            false,
            "One for each pot sown of crops that bear no moving, which are planted with it; each holds about 0.15 litres (from"
                    + " memory)."),
    POTS(
            "pots",
            "Pots of 9 cm (3.5 in)",
            false,
            "One for each plant wanted, of sowings that have time to be potted on."),
    BAGS(
            "bags",
            "Small bags that close, each with two sheets of kitchen paper",
            false,
            "One for each sowing that is sprouted in damp paper (common practice)."),
    LABELS(
            "labels",
            "Labels, and a pencil",
            false,
            "One for each tray of a variety and each bag, one more for the cells after a bag, and one for each pot (common"
                    + " practice)."),
    PEROXIDE(
            "peroxide",
            "Household hydrogen peroxide (3 %), if you like",
            true,
            "Optional: about 5 ml to 45 ml of water for each soak of those who want it, as the how-to mixes it (our"
                    + " assumption; the evidence is thin). Plain water does as well. Never for treated seed.");

    private final String word;
    private final String words;
    private final boolean volume;
    private final String reckoned;

    SupplyItem(String word, String words, boolean volume, String reckoned) {
        this.word = word;
        this.words = words;
        this.volume = volume;
        this.reckoned = reckoned;
    }

    /** The word the database keeps. */
    public String word() {
        return word;
    }

    /** As a list names it. */
    public String words() {
        return words;
    }

    /** Whether it is measured in millilitres rather than counted. */
    public boolean isVolume() {
        return volume;
    }

    /** Whether it is reckoned by what cells or pots hold, which differs by a quarter between makers (containers.csv). */
    public boolean isUncertain() {
        return this == SOWING_COMPOST || this == POTTING_COMPOST;
    }

    /** The step up to which a volume is bought, in litres or quarts: no size that shops have is assumed. */
    int step() {
        return this == SOWING_COMPOST || this == POTTING_COMPOST ? 5 : 1;
    }

    /** Whether nobody needs it. */
    public boolean isOptional() {
        return this == PEROXIDE;
    }

    /** How its amount is worked out, and where the figures are from. */
    public String reckoned() {
        return reckoned;
    }

    /** The item of that word; empty where there is none. */
    public static Optional<SupplyItem> named(String word) {
        for (SupplyItem item : values()) {
            if (item.word.equals(word)) {
                return Optional.of(item);
            }
        }
        return Optional.empty();
    }
}
