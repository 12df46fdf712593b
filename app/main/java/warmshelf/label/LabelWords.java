package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import warmshelf.label.paper.LabelMedium;
import warmshelf.label.paper.LabelPart;

/** What the things that labels are made of and say are called on pages. */
final class LabelWords {
    private LabelWords() {}

    static String of(LabelPart.Kind kind) {
        return switch (kind) {
            case VARIETY -> SAY.partVariety();
            case TRIAL -> SAY.partTrial();
            case TREATED -> SAY.partTreated();
            case GROWER -> SAY.partGrower();
            case DATE -> SAY.partDate();
            case CROP -> SAY.partCrop();
            case LOT -> SAY.partLot();
        };
    }

    static String of(LabelMedium medium) {
        return switch (medium) {
            case STICK -> SAY.stick();
            case TAG -> SAY.tag();
            case ROLL -> SAY.roll();
            case SHEET -> SAY.sheet();
        };
    }
}
