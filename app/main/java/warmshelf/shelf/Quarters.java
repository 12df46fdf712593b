package warmshelf.shelf;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of quarters within a place. A place holds a tray of about 21 by 10.5 inches, so that a half is square; quarters 1
 * and 2 lie behind each other in the left half, 3 and 4 in the right.
 */
public record Quarters(int first, int count) {

    /** As a script reads it: '3/2' is the right half. */
    public String key() {
        return first + "/" + count;
    }

    /** Where these quarters lie within the rectangle of their place. */
    Box within(Box place) {
        int half = place.width() / 2;
        int x = first <= 2 ? place.x() : place.x() + half;
        return switch (count) {
            case 4 -> place;
            case 2 -> new Box(x, place.y(), half, place.height());
            default -> {
                int depth = place.height() / 2;
                yield new Box(x, first % 2 == 1 ? place.y() : place.y() + depth, half, depth);
            }
        };
    }

    boolean contains(int quarter) {
        return quarter >= first && quarter < first + count;
    }

    /** What is left of a place, in pieces as large as a tray, a half tray or a bag could take. */
    static List<Quarters> free(List<Quarters> taken) {
        if (taken.isEmpty()) {
            return List.of(new Quarters(1, 4));
        }
        List<Quarters> free = new ArrayList<>();
        for (int left = 1; left <= 3; left += 2) {
            boolean firstFree = isFree(taken, left);
            boolean secondFree = isFree(taken, left + 1);
            if (firstFree && secondFree) {
                free.add(new Quarters(left, 2));
            } else if (firstFree) {
                free.add(new Quarters(left, 1));
            } else if (secondFree) {
                free.add(new Quarters(left + 1, 1));
            }
        }
        return free;
    }

    private static boolean isFree(List<Quarters> taken, int quarter) {
        return taken.stream().noneMatch(quarters -> quarters.contains(quarter));
    }
}
