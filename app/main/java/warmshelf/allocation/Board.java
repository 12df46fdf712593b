package warmshelf.allocation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;

/** Who takes which quarter of which place on which day, and the set-point of each mat and day, over a span of days. */
public final class Board {
    private static final int NO_SET_POINT = Integer.MIN_VALUE;

    private final LocalDate from;
    private final int days;
    private final List<MatSpace> mats;
    private final Map<UUID, byte[]> taken = new HashMap<>();
    private final Map<UUID, int[]> setPoints = new LinkedHashMap<>();

    /**
     * An empty board.
     *
     * @param to the day after the last day
     */
    public Board(LocalDate from, LocalDate to, List<MatSpace> mats) {
        this.from = from;
        this.days = (int) ChronoUnit.DAYS.between(from, to);
        this.mats = List.copyOf(mats);
        for (MatSpace mat : mats) {
            int[] free = new int[days];
            Arrays.fill(free, NO_SET_POINT);
            setPoints.put(mat.id(), free);
            mat.places().forEach(place -> taken.put(place, new byte[days]));
        }
    }

    public List<MatSpace> mats() {
        return mats;
    }

    public LocalDate from() {
        return from;
    }

    /** The day after the last day. */
    public LocalDate to() {
        return from.plusDays(days);
    }

    /** Marks quarters as taken; days outside the board do not count. */
    public void take(UUID place, Slot slot, LocalDate first, LocalDate afterLast) {
        byte[] masks = taken.get(place);
        if (masks == null) {
            return;
        }
        for (int day = index(first); day < index(afterLast); day++) {
            masks[day] |= (byte) slot.mask();
        }
    }

    /** Fixes a mat's set-point on days. */
    public void setPoint(UUID mat, LocalDate first, LocalDate afterLast, int celsius) {
        int[] onDays = setPoints.get(mat);
        if (onDays != null) {
            Arrays.fill(onDays, index(first), index(afterLast), celsius);
        }
    }

    /** Whether quarters are free on all days; false when the days reach outside the board. */
    public boolean isFree(UUID place, Slot slot, LocalDate first, LocalDate afterLast) {
        byte[] masks = taken.get(place);
        if (masks == null || first.isBefore(from) || afterLast.isAfter(to())) {
            return false;
        }
        for (int day = index(first); day < index(afterLast); day++) {
            if ((masks[day] & slot.mask()) != 0) {
                return false;
            }
        }
        return true;
    }

    /** How many quarters of a place are taken on a day. */
    public int takenQuarters(UUID place, LocalDate day) {
        byte[] masks = taken.get(place);
        return masks == null || day.isBefore(from) || !day.isBefore(to()) ? 0 : Integer.bitCount(masks[index(day)]);
    }

    /** The set-point that is fixed for a mat on a day. */
    public OptionalInt setPoint(UUID mat, LocalDate day) {
        int[] onDays = setPoints.get(mat);
        if (onDays == null || day.isBefore(from) || !day.isBefore(to()) || onDays[index(day)] == NO_SET_POINT) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(onDays[index(day)]);
    }

    /** Whether a mat can hold one temperature throughout: no day is fixed at another. */
    public boolean canHold(UUID mat, int celsius, LocalDate first, LocalDate afterLast) {
        int[] onDays = setPoints.get(mat);
        if (onDays == null) {
            return false;
        }
        for (int day = index(first); day < index(afterLast); day++) {
            if (onDays[day] != NO_SET_POINT && onDays[day] != celsius) {
                return false;
            }
        }
        return true;
    }

    /** Puts what was offered on the board, so that the next offer respects it. */
    public void accept(Offer offer) {
        take(offer.placeId(), offer.slot(), offer.from(), offer.to());
        setPoint(offer.mat().id(), offer.from(), offer.to(), offer.celsius());
    }

    private int index(LocalDate day) {
        long offset = ChronoUnit.DAYS.between(from, day);
        return (int) Math.max(0, Math.min(days, offset));
    }
}
