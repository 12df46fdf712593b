package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** What stands in the way of the seeds that a number of plants needs. */
sealed interface SeedTrouble extends Message {

    /** So little comes up that no number of seeds would do. */
    record NextToNothingComesUp() implements SeedTrouble {
        @Override
        public String words(Units units) {
            return SAY.nextToNothingComesUp();
        }
    }

    /**
     * No seed is free.
     *
     * @param has what there is of the lot, as the beginning of a sentence
     */
    record NoneLeft(String has) implements SeedTrouble {
        @Override
        public String words(Units units) {
            return SAY.noneLeft(has);
        }
    }

    /**
     * The seed is old and there is little of it, so it is tested first.
     *
     * @param has what there is of the lot, as the beginning of a sentence
     * @param expected plants of the seed that there is, untested
     */
    record TestFirst(String has, int plants, long expected) implements SeedTrouble {
        @Override
        public String words(Units units) {
            return SAY.testTenFirst(has, plants, expected);
        }
    }

    /**
     * Fewer seeds are free than the plants need.
     *
     * @param has what there is of the lot, as the beginning of a sentence
     * @param needed seeds, nine times in ten enough
     * @param expected plants of the seed that there is
     * @param littleKnown whether doubt asks for more of it than a test would
     */
    record TooFew(String has, int needed, int plants, long expected, boolean littleKnown) implements SeedTrouble {
        @Override
        public String words(Units units) {
            return littleKnown
                    ? SAY.tooFewLittleKnown(has, needed, plants, expected)
                    : SAY.tooFewForPlants(has, needed, plants, expected);
        }
    }

    /**
     * The tray has fewer cells than that.
     *
     * @param littleKnown whether doubt asks for more seed than a test would
     */
    record TooFewCells(int cells, int capacity, boolean littleKnown) implements SeedTrouble {
        @Override
        public String words(Units units) {
            return littleKnown ? SAY.tooFewCellsLittleKnown(cells, capacity) : SAY.tooFewCells(cells, capacity);
        }
    }

    /** The same of what is sown each in a pot of its own. */
    record TooFewPots(TooFewCells cells) implements SeedTrouble {
        @Override
        public String words(Units units) {
            return cells.littleKnown()
                    ? SAY.tooFewPotsLittleKnown(cells.cells(), cells.capacity())
                    : SAY.tooFewPots(cells.cells(), cells.capacity());
        }
    }
}
