package warmshelf.allocation;

import java.time.LocalDate;
import warmshelf.shelf.Outage;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** One thing that keeps a stay from lying somewhere. */
public sealed interface Obstacle {

    /** A sentence for people, in a reader's units. */
    String words(Units units);

    /** Somebody else lies there. */
    record Taken(CandidatePlace place, Neighbour by) implements Obstacle {
        @Override
        public String words(Units units) {
            return "Place %d %s is taken by %s, %s."
                    .formatted(
                            place.number(),
                            place.mat() == null
                                    ? "under the light"
                                    : "on mat " + place.mat().name(),
                            by.words(),
                            DayWords.span(by.from(), by.to()));
        }
    }

    /** The mat cannot be used on some of the days. */
    record Out(MatSpace mat, Outage outage) implements Obstacle {
        @Override
        public String words(Units units) {
            return "Mat %s is out of service %s: %s."
                    .formatted(mat.name(), DayWords.span(outage.from(), outage.to()), outage.reason());
        }
    }

    /** The days reach beyond those that are looked at. */
    record TooFar(LocalDate lastDay) implements Obstacle {
        @Override
        public String words(Units units) {
            return "Nothing is known yet of the days after %s.".formatted(DayWords.day(lastDay));
        }
    }

    /** The seed does not come up well at a set-point asked for. */
    record OutsideBand(double celsius, Band band) implements Obstacle {
        @Override
        public String words(Units units) {
            return "%s is outside what this crop's seed likes: %s."
                    .formatted(units.temperature(celsius), band.words(units));
        }
    }

    /** The thermostat cannot hold a set-point asked for. */
    record BeyondThermostat(MatSpace mat, double celsius) implements Obstacle {
        @Override
        public String words(Units units) {
            return "Mat %s can hold %s, not %s."
                    .formatted(mat.name(), mat.thermostat().words(units), units.temperature(celsius));
        }
    }

    /** What lies there already needs a set-point that the seed does not like. */
    record SetForOthers(MatSpace mat, LocalDate day, double celsius, Band band) implements Obstacle {
        @Override
        public String words(Units units) {
            return "Mat %s stands at %s on %s for what already lies there; this crop's seed likes %s."
                    .formatted(mat.name(), units.temperature(celsius), DayWords.date(day), band.words(units));
        }
    }

    /** The mat was turned since the set-points were worked out. */
    record TurnedSince(MatSpace mat, LocalDate day, double celsius, double worked) implements Obstacle {
        @Override
        public String words(Units units) {
            return "Mat %s stands at %s on %s for what already lies there, so it cannot be %s."
                    .formatted(mat.name(), units.temperature(celsius), DayWords.date(day), units.temperature(worked));
        }
    }

    /** Something that lies there already keeps its days. */
    record DaysStay(LocalDate since) implements Obstacle {
        @Override
        public String words(Units units) {
            return "It lies there since %s, so its days stay; only its place can change, from today on."
                    .formatted(DayWords.day(since));
        }
    }

    /** From a mat to a light, or the other way. */
    record OtherKind(boolean fromMat) implements Obstacle {
        @Override
        public String words(Units units) {
            return fromMat
                    ? "There is no bottom heat under the light; it goes there when an entry says that it is up."
                    : "It lies under a light, so it moves to another place under a light, not to a mat.";
        }
    }
}
