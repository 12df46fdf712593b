package warmshelf.shelf;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Numbers;

/**
 * Where racks stand, on one electrical circuit.
 *
 * @param walkOrder sites are walked by this number, then by name
 * @param racks in walking order
 */
public record Site(UUID id, String name, int walkOrder, Circuit circuit, String note, int version, List<Rack> racks) {

    /** The one chosen, or all where none is. */
    static List<Site> shown(List<Site> sites, @Nullable UUID chosen) {
        return chosen == null
                ? sites
                : sites.stream().filter(site -> site.id().equals(chosen)).toList();
    }

    /** Watts of all mats and lights here, as if everything ran at once. */
    public int connectedWatts() {
        return racks.stream()
                .flatMap(rack -> rack.shelves().stream())
                .mapToInt(Shelf::watts)
                .sum();
    }

    /** Connected watts as a share of what the circuit carries for hours, in percent; above 100 is too much. */
    public int loadPercent() {
        return (int) Math.ceil(100.0 * connectedWatts() / circuit.continuousWatts());
    }

    public boolean isOverloaded() {
        return connectedWatts() > circuit.continuousWatts();
    }

    /** How much of the circuit is spoken for, as a sentence. */
    public String loadWords() {
        String load = "Mats and lights draw %,d W together; plan for at most %,d W, 80 %% of this circuit’s %,d W."
                .formatted(connectedWatts(), circuit.continuousWatts(), circuit.ratedWatts());
        return isOverloaded() ? load + " That is too much: move something to another circuit." : load;
    }

    /** What it says, in one line. */
    String words() {
        return "%s, walking order %d, %s A at %d V"
                .formatted(name, walkOrder, Numbers.plain(circuit.amps()), circuit.volts());
    }
}
