package warmshelf.supply;

import static warmshelf.supply.SupplySentences.SAY;

import java.util.Optional;

/** Something a season's sowings need; volumes in millilitres, the rest in pieces. */
public enum SupplyItem {
    SOWING_COMPOST("sowing-compost", SAY.sowingCompost(), true, SAY.sowingCompostReckoned()),
    COVERING("covering", SAY.covering(), true, SAY.coveringReckoned()),
    POTTING_COMPOST("potting-compost", SAY.pottingCompost(), true, SAY.pottingCompostReckoned()),
    CELL_TRAYS("cell-trays", SAY.cellTrays(), false, SAY.cellTraysReckoned()),
    ROTTING_POTS("rotting-pots", SAY.rottingPots(), false, SAY.rottingPotsReckoned()),
    POTS("pots", SAY.pots(), false, SAY.potsReckoned()),
    BAGS("bags", SAY.bags(), false, SAY.bagsReckoned()),
    LABELS("labels", SAY.labels(), false, SAY.labelsReckoned()),
    PEROXIDE("peroxide", SAY.peroxide(), true, SAY.peroxideReckoned());

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
