package warmshelf.finding.prediction;

import java.util.UUID;
import warmshelf.crop.Crop;
import warmshelf.seed.PlantOutlook;

/**
 * The plants that one sowing was to give, and how many there were.
 *
 * @param told as its seed was known when it was sown
 * @param wanted plants
 * @param seen plants when they went out; 0 where it was given up
 */
record PlantPrediction(UUID sowingId, int season, Crop crop, int seeds, PlantOutlook told, int wanted, int seen) {
    private static final double TAIL = 0.05;

    /** The chance that was told for the plants wanted. */
    double chanceOfWanted() {
        return told.atLeast(wanted);
    }

    boolean hadWanted() {
        return seen >= wanted;
    }

    /** The lower end of the middle 90 % of what was told. */
    int low() {
        return told.reachedWith(1 - TAIL);
    }

    /** The upper end of it. */
    int high() {
        return told.reachedWith(TAIL);
    }

    /** How much of what was told lies below what was seen; half of the chance of the very number counts as below. */
    double reached() {
        double above = told.atLeast(seen + 1);
        return 1 - (above + told.atLeast(seen)) / 2;
    }

    /** Plants more than told for each seed; negative for fewer. */
    double moreForEachSeed() {
        return (seen - told.expected()) / seeds;
    }
}
