package warmshelf.sowing;

import java.util.Optional;

/**
 * The footprint of a tray and how much of a place it takes. A place holds one standard tray: nominally 10 by 20 inches, by
 * the outside of real ones up to 533 by 277 mm (university extension pages and maker tables in containers.csv disagree by
 * half an inch; the largest is taken).
 *
 * @param longSideMm the longer side in millimetres
 * @param shortSideMm the shorter side in millimetres
 */
public record TraySize(int longSideMm, int shortSideMm) {
    public static final TraySize PLACE = new TraySize(533, 277);
    // A hand's breadth of play: lips differ between makers, and a tray may overhang a mat's edge by a finger.
    private static final int PLAY_MM = 10;

    public TraySize {
        if (longSideMm < shortSideMm) {
            int swapped = longSideMm;
            longSideMm = shortSideMm;
            shortSideMm = swapped;
        }
        if (shortSideMm < 1) {
            throw new IllegalArgumentException("a tray's sides must be at least 1 mm, was " + shortSideMm);
        }
    }

    /** The smallest container's space this tray fits into; empty when it is larger than a place. */
    public Optional<Container> fits() {
        if (fitsInto(PLACE.longSideMm / 2, PLACE.shortSideMm)) {
            return Optional.of(Container.HALF_TRAY);
        }
        return fitsInto(PLACE.longSideMm, PLACE.shortSideMm) ? Optional.of(Container.TRAY) : Optional.empty();
    }

    private boolean fitsInto(int sideMm, int otherSideMm) {
        int longer = Math.max(sideMm, otherSideMm) + PLAY_MM;
        int shorter = Math.min(sideMm, otherSideMm) + PLAY_MM;
        return longSideMm <= longer && shortSideMm <= shorter;
    }
}
