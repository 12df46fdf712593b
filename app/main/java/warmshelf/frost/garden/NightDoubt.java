package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import warmshelf.words.Degrees;
import warmshelf.words.Units;

/** Why a night's temperature is doubtful; all in degrees Celsius. */
public sealed interface NightDoubt {
    /** The doubt as a clause, for example '77.2 °F is warm for the lowest of a night'. */
    String words(Units units);

    /** Hardly a night is so warm. */
    record Warm(double celsius) implements NightDoubt {
        @Override
        public String words(Units units) {
            return SAY.warmForLowest(Degrees.words(celsius, units));
        }
    }

    /** By more than a difference colder than the coldest night around. */
    record MuchColder(double celsius, double difference, double coldest) implements NightDoubt {
        @Override
        public String words(Units units) {
            return SAY.muchColder(
                    Degrees.words(celsius, units),
                    units.temperatureDifference(difference),
                    Degrees.words(coldest, units));
        }
    }
}
