package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A place with everything around it, so that a person can be led to it.
 *
 * @param mat null on a lit shelf
 */
public record PlaceOnSite(
        Site site, Rack rack, Shelf shelf, @Nullable Mat mat, Place place) {

    /** All places in walking order: site, rack, shelf from the top, mats, then lit places. */
    public static List<PlaceOnSite> walk(List<Site> sites) {
        List<PlaceOnSite> spots = new ArrayList<>();
        for (Site site : sites) {
            for (Rack rack : site.racks()) {
                rack.shelves().forEach(shelf -> addShelf(spots, site, rack, shelf));
            }
        }
        return spots;
    }

    public static Optional<PlaceOnSite> find(List<Site> sites, UUID placeId) {
        return walk(sites).stream()
                .filter(spot -> spot.place().id().equals(placeId))
                .findFirst();
    }

    private static void addShelf(List<PlaceOnSite> spots, Site site, Rack rack, Shelf shelf) {
        for (Mat mat : shelf.mats()) {
            mat.places().forEach(place -> spots.add(new PlaceOnSite(site, rack, shelf, mat, place)));
        }
        shelf.litPlaces().forEach(place -> spots.add(new PlaceOnSite(site, rack, shelf, null, place)));
    }

    /** For example 'mat M3, place 2' or 'lit place 2'. */
    public String placeWords() {
        return mat == null ? SAY.litPlace(place.number()) : SAY.matAndPlace(mat.name(), place.number());
    }

    /** For example 'Hall cellar, rack A, shelf 2, mat M3, place 2'. */
    public String words() {
        return SAY.placeOf(SAY.shelfOf(site.name(), rack.name(), shelf.fromTop()), placeWords());
    }
}
