package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.List;
import java.util.UUID;
import warmshelf.words.Units;

/**
 * A heat mat on a shelf; everything on it lies at one temperature.
 *
 * @param lowC lowest set-point its thermostat offers, °C
 * @param highC highest set-point, °C
 * @param watts what it draws while it heats
 * @param usualC set-point for the first thing that lies on it, °C
 */
public record Mat(
        UUID id,
        UUID shelfId,
        String name,
        int walkOrder,
        double lowC,
        double highC,
        int watts,
        double usualC,
        LightAbove light,
        int version,
        List<Place> places) {

    /** What it says, in one line. */
    String words(Units units) {
        return SAY.matNow(
                name,
                walkOrder,
                places.size(),
                units.temperatureRange(lowC, highC),
                units.temperature(usualC),
                String.valueOf(watts),
                light.words());
    }
}
