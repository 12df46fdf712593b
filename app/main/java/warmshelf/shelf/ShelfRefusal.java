package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a site, rack, shelf or mat is not added or changed. */
public sealed interface ShelfRefusal extends Message {

    /** The form's field that it is about; empty: it is about all of it. */
    default String field() {
        return "";
    }

    /** Another site has the name. */
    record SiteNameTaken(String name) implements ShelfRefusal {
        @Override
        public String field() {
            return "name";
        }

        @Override
        public String words(Units units) {
            return SAY.siteNameTaken(name);
        }
    }

    /** Another rack of the site has the name. */
    record RackNameTaken(String name) implements ShelfRefusal {
        @Override
        public String field() {
            return "name";
        }

        @Override
        public String words(Units units) {
            return SAY.rackNameTaken(name);
        }
    }

    /** Another mat of the group has the name. */
    record MatNameTaken(String name) implements ShelfRefusal {
        @Override
        public String field() {
            return "name";
        }

        @Override
        public String words(Units units) {
            return SAY.matNameTaken(name);
        }
    }

    /** The rack has another shelf at that level, counted from the top. */
    record LevelTaken(int level) implements ShelfRefusal {
        @Override
        public String field() {
            return "fromTop";
        }

        @Override
        public String words(Units units) {
            return SAY.levelTaken(level);
        }
    }

    /** Something lies or lay on a place of the mat that would go. */
    record PlacesUsed(int places) implements ShelfRefusal {
        @Override
        public String field() {
            return "places";
        }

        @Override
        public String words(Units units) {
            return SAY.placesUsed(places);
        }
    }

    /** Something lies or lay on a place under light that would go. */
    record LitPlacesUsed(int places) implements ShelfRefusal {
        @Override
        public String field() {
            return "litPlaces";
        }

        @Override
        public String words(Units units) {
            return SAY.litPlacesUsed(places);
        }
    }

    /** The mat is set on a day to what its thermostat could not hold. */
    record SetPointOutside(Thermostat thermostat, double celsius, LocalDate day) implements ShelfRefusal {
        @Override
        public String field() {
            return "low";
        }

        @Override
        public String words(Units units) {
            return SAY.setPointOutside(thermostat.words(units), units.temperature(celsius), day.toString());
        }
    }

    /** Racks stand at the site that is to be deleted. */
    record RacksStand(int racks) implements ShelfRefusal {
        @Override
        public String words(Units units) {
            return SAY.racksStand(Counted.of(racks, "rack", "racks"));
        }
    }

    /** Trays lie on what is to be deleted. */
    record TraysLie(int trays) implements ShelfRefusal {
        @Override
        public String words(Units units) {
            return trays == 1 ? SAY.trayLies() : SAY.traysLie(trays);
        }
    }

    /** Trays are to lie on what is to be deleted. */
    record TraysBooked(int trays) implements ShelfRefusal {
        @Override
        public String words(Units units) {
            return trays == 1 ? SAY.trayBooked() : SAY.traysBooked(trays);
        }
    }

    /** Trays lie on what is to be retired on that day or later. */
    record LieBeyond(int trays, LocalDate from) implements ShelfRefusal {
        @Override
        public String words(Units units) {
            return trays == 1 ? SAY.liesBeyond(DayWords.day(from)) : SAY.lieBeyond(trays, DayWords.day(from));
        }
    }

    /** Something is recorded of what is to be deleted. */
    record WasUsed() implements ShelfRefusal {
        @Override
        public String words(Units units) {
            return SAY.wasUsed();
        }
    }

    /** Somebody else changed it after it was read. */
    record ChangedMeanwhile() implements ShelfRefusal {
        @Override
        public String words(Units units) {
            return SAY.changedMeanwhile();
        }
    }
}
