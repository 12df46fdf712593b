package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/**
 * Why what is asked for cannot be planned.
 *
 * @param field of the form, where it can be mended
 */
record AskRefusal(String field, Message why) implements Message {

    /** No frost dates are known for where the plants go out. */
    record NoFrostDates(String postcode, String country) implements Message {
        @Override
        public String words(Units units) {
            return SAY.noFrostDates(postcode, country);
        }
    }

    /** More seeds than one bag holds. */
    record BagTooSmall(int seeds, int holds) implements Message {
        @Override
        public String words(Units units) {
            return SAY.bagTooSmall(seeds, holds);
        }
    }

    @Override
    public String words(Units units) {
        return why.words(units);
    }
}
