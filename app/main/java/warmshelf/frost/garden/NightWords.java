package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import warmshelf.frost.Threshold;

/** What a night's lowest temperature means for plants, in a word or two. */
final class NightWords {
    private NightWords() {}

    /** 'killing frost', 'frost', 'ground may freeze' or 'no frost'. */
    static String of(double celsius) {
        if (celsius <= Threshold.KILLING.celsius()) {
            return SAY.killingFrost();
        }
        if (celsius <= Threshold.FROST.celsius()) {
            return SAY.frost();
        }
        return celsius <= Threshold.LIGHT.celsius() ? SAY.groundMayFreeze() : SAY.noFrost();
    }
}
