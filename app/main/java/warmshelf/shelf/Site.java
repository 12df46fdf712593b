package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Reach;
import warmshelf.words.Numbers;

/**
 * Where racks stand, on one electrical circuit.
 *
 * @param walkOrder sites are walked by this number, then by name
 * @param racks in walking order
 */
public record Site(UUID id, String name, int walkOrder, Circuit circuit, String note, int version, List<Rack> racks) {

    /** The same with other racks. */
    Site with(List<Rack> others) {
        return new Site(id, name, walkOrder, circuit, note, version, others);
    }

    /** Those on which somebody may decide first, else in walking order. */
    static List<Site> theirsFirst(List<Site> sites, Reach reach) {
        return sites.stream()
                .sorted(Comparator.comparing(site -> !reach.covers(site.id())))
                .toList();
    }

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
        String load = SAY.circuitLoad(connectedWatts(), circuit.continuousWatts(), circuit.ratedWatts());
        return isOverloaded() ? load + " " + SAY.tooMuch() : load;
    }

    /** What it says, in one line. */
    String words() {
        return SAY.siteNow(name, walkOrder, Numbers.plain(circuit.amps()), circuit.volts());
    }
}
