package warmshelf.allocation;

import java.util.List;
import java.util.UUID;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.Thermostat;

/**
 * A mat as the placing sees it.
 *
 * @param where site, rack and shelf in words
 * @param thermostat the temperatures it can hold
 * @param usualC the set-point it is given when nothing else decides
 * @param places in order; the first is place 1
 */
public record MatSpace(
        UUID id, String name, String where, Thermostat thermostat, double usualC, LightAbove light, List<UUID> places) {

    /** A mat of whose light nothing is known. */
    public MatSpace(UUID id, String name, String where, Thermostat thermostat, double usualC, List<UUID> places) {
        this(id, name, where, thermostat, usualC, LightAbove.NOT_KNOWN, places);
    }
}
