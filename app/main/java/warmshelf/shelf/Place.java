package warmshelf.shelf;

import java.util.UUID;

/**
 * Room for one standard tray, in four quarters: 1 and 2 are the left half, 3 and 4 the right.
 *
 * @param number counted from 1 on its mat or lit shelf
 */
public record Place(UUID id, int number) {
    public static final int QUARTERS = 4;
}
