package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.List;
import java.util.UUID;

/**
 * One level of a rack.
 *
 * @param fromTop 1 is the topmost
 * @param lightWatts what its lights draw; 0 without lights
 * @param lamp its lights
 * @param mats in walking order
 * @param litPlaces growing-on places under its lights
 */
public record Shelf(
        UUID id,
        UUID rackId,
        int fromTop,
        int lightWatts,
        Lamp lamp,
        int version,
        List<Mat> mats,
        List<Place> litPlaces) {

    /** The same with other mats. */
    Shelf with(List<Mat> others) {
        return new Shelf(id, rackId, fromTop, lightWatts, lamp, version, others, litPlaces);
    }

    public boolean isLit() {
        return !litPlaces.isEmpty();
    }

    public int watts() {
        return lightWatts + mats.stream().mapToInt(Mat::watts).sum();
    }

    /** What it says, in one line. */
    String words() {
        String lights = SAY.shelfNow(fromTop, litPlaces.size(), lightWatts);
        return lamp.words().isEmpty() ? lights : lights + ", " + lamp.words();
    }
}
