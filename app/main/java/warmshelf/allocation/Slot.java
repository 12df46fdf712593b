package warmshelf.allocation;

import static warmshelf.allocation.AllocationSentences.SAY;

import java.util.List;

/**
 * Quarters of one place that can hold something together: all four, the left half (1-2), the right half (3-4), or one.
 *
 * @param firstQuarter 1..4
 * @param quarters 1, 2 or 4
 */
public record Slot(int firstQuarter, int quarters) {
    /** How many quarters a place has. */
    public static final int OF_A_PLACE = 4;

    private static final List<Slot> WHOLE = List.of(new Slot(1, 4));
    private static final List<Slot> HALVES = List.of(new Slot(1, 2), new Slot(3, 2));
    private static final List<Slot> QUARTERS = List.of(new Slot(1, 1), new Slot(2, 1), new Slot(3, 1), new Slot(4, 1));

    public Slot {
        boolean within = switch (quarters) {
            case 4 -> firstQuarter == 1;
            case 2 -> firstQuarter == 1 || firstQuarter == 3;
            case 1 -> firstQuarter >= 1 && firstQuarter <= 4;
            default -> false;
        };
        if (!within) {
            throw new IllegalArgumentException(
                    "quarters %d from quarter %d do not lie within one place".formatted(quarters, firstQuarter));
        }
    }

    /** Every slot of that many quarters within a place; none when the place is too small. */
    public static List<Slot> of(int quarters) {
        return switch (quarters) {
            case 4 -> WHOLE;
            case 2 -> HALVES;
            case 1 -> QUARTERS;
            default -> List.of();
        };
    }

    /** Bit 0 for quarter 1, and so on. */
    int mask() {
        return ((1 << quarters) - 1) << (firstQuarter - 1);
    }

    /** Whether both take a quarter of one place. */
    public boolean overlaps(Slot other) {
        return (mask() & other.mask()) != 0;
    }

    /** For example 'whole', 'left half' or 'quarter 3'. */
    public String words() {
        return switch (quarters) {
            case 4 -> SAY.wholePlace();
            case 2 -> firstQuarter == 1 ? SAY.leftHalf() : SAY.rightHalf();
            default -> SAY.quarter(firstQuarter);
        };
    }
}
