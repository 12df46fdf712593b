package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import warmshelf.crop.Method;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;

/** What a label is stuck on. */
public enum LabelPurpose {
    BAG("bag"),
    TRAY("tray"),
    POT("pot"),
    /** A rack, a shelf or a mat. */
    PLACE("place");

    private static final int MOST_POTS = 60;

    private final String word;

    LabelPurpose(String word) {
        this.word = word;
    }

    /** The word the database keeps. */
    public String word() {
        return word;
    }

    /** For example '6 trays'. */
    public String counted(int number) {
        return switch (this) {
            case BAG -> SAY.bags(number);
            case TRAY -> SAY.trays(number);
            case POT -> SAY.pots(number);
            case PLACE -> SAY.places(number);
        };
    }

    /** The purpose of that word. */
    public static LabelPurpose named(String word) {
        for (LabelPurpose purpose : values()) {
            if (purpose.word.equals(word)) {
                return purpose;
            }
        }
        throw new IllegalArgumentException("no label is for a '" + word + "'");
    }

    /**
     * What of a sowing wants a label as far as it has come: its bag until all is moved, its tray from then on, or from sowing on,
     * its pots once it is potted on. What is not sown yet wants the label of what it will be sown in, as one writes it first.
     */
    public static List<LabelPurpose> wantedBy(Sowing sowing, Progress progress) {
        SowingStage stage = progress.stage();
        if (stage.isOver()) {
            return List.of();
        }
        if (progress.seen().pottedOn() != null) {
            return List.of(POT);
        }
        List<LabelPurpose> wanted = new ArrayList<>();
        boolean inBag = sowing.method() == Method.BAG && stage.compareTo(SowingStage.SPROUTING) <= 0;
        if (inBag) {
            wanted.add(BAG);
        }
        if (!inBag || progress.moved() > 0) {
            wanted.add(TRAY);
        }
        return wanted;
    }

    /** How many labels alike it takes: one, but one for each pot. */
    int copies(Sowing sowing, Progress progress) {
        if (this != POT) {
            return 1;
        }
        int plants = progress.alive() > 0 ? progress.alive() : sowing.plantsWanted();
        return Math.min(MOST_POTS, plants);
    }
}
