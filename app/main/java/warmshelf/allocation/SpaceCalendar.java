package warmshelf.allocation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.shelf.Outage;

/**
 * Who takes which quarter of which place on which day, the set-point of each mat and day, and the days on which a mat cannot be
 * used, over a span of days.
 */
public final class SpaceCalendar {
    private static final Slot WHOLE = new Slot(1, 4);
    private static final double NO_SET_POINT = Double.NaN;

    private final LocalDate from;
    private final long firstEpochDay;
    private final int days;
    private final List<MatSpace> mats;
    private final Map<UUID, byte[]> taken = new HashMap<>();
    private final Map<UUID, double[]> setPoints = new LinkedHashMap<>();
    private final Map<UUID, double[]> ready = new HashMap<>();
    private final List<Outage> outages = new ArrayList<>();
    private final Set<UUID> closed = new HashSet<>();

    /**
     * An empty board.
     *
     * @param to the day after the last day
     */
    public SpaceCalendar(LocalDate from, LocalDate to, List<MatSpace> mats) {
        this.from = from;
        this.firstEpochDay = from.toEpochDay();
        this.days = (int) ChronoUnit.DAYS.between(from, to);
        this.mats = List.copyOf(mats);
        for (MatSpace mat : mats) {
            setPoints.put(mat.id(), nothingSet());
            ready.put(mat.id(), nothingSet());
            mat.places().forEach(place -> taken.put(place, new byte[days]));
        }
    }

    /** The same, to be filled further without changing this one. */
    public SpaceCalendar copy() {
        SpaceCalendar copy = new SpaceCalendar(from, to(), mats);
        taken.forEach((place, masks) -> copy.taken.put(place, masks.clone()));
        setPoints.forEach((mat, onDays) -> copy.setPoints.put(mat, onDays.clone()));
        ready.forEach((mat, onDays) -> copy.ready.put(mat, onDays.clone()));
        copy.outages.addAll(outages);
        copy.closed.addAll(closed);
        return copy;
    }

    /** The same mats with nothing on them and only their days out of service. */
    public SpaceCalendar bare() {
        SpaceCalendar bare = new SpaceCalendar(from, to(), mats);
        outages.forEach(bare::takeOut);
        bare.closed.addAll(closed);
        return bare;
    }

    /** The same with no mat set to anything, to see whether there is room apart from warmth. */
    public SpaceCalendar unset() {
        SpaceCalendar unset = new SpaceCalendar(from, to(), mats);
        taken.forEach((place, masks) -> unset.taken.put(place, masks.clone()));
        unset.outages.addAll(outages);
        unset.closed.addAll(closed);
        return unset;
    }

    private double[] nothingSet() {
        double[] unset = new double[days];
        Arrays.fill(unset, NO_SET_POINT);
        return unset;
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

    /** Takes a mat out of service: all its places are taken on those days. */
    public void takeOut(Outage outage) {
        mats.stream().filter(mat -> mat.id().equals(outage.matId())).forEach(mat -> {
            outages.add(outage);
            mat.places().forEach(place -> take(place, WHOLE, outage.from(), outage.to()));
        });
    }

    /** Offers nothing on a mat, because its rack is held; nobody knows until when. */
    public void close(UUID mat) {
        closed.add(mat);
    }

    /** Whether nothing is offered on a mat, because its rack is held. */
    public boolean isClosed(UUID mat) {
        return closed.contains(mat);
    }

    /** The days on which a mat cannot be used, the earliest first. */
    public List<Outage> outages(UUID mat) {
        return outages.stream()
                .filter(outage -> outage.matId().equals(mat))
                .sorted(Comparator.comparing(Outage::from))
                .toList();
    }

    /** Fixes a mat's set-point on days on which something lies on it. */
    public void setPoint(UUID mat, LocalDate first, LocalDate afterLast, double celsius) {
        fill(setPoints.get(mat), first, afterLast, celsius);
    }

    /** A mat's set-point on days on which nothing lies on it: it stands ready, and may still be turned. */
    public void makeReady(UUID mat, LocalDate first, LocalDate afterLast, double celsius) {
        fill(ready.get(mat), first, afterLast, celsius);
    }

    private void fill(double @Nullable [] onDays, LocalDate first, LocalDate afterLast, double celsius) {
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
    public OptionalDouble setPoint(UUID mat, LocalDate day) {
        return on(setPoints.get(mat), day);
    }

    /** The set-point at which an empty mat stands ready on a day. */
    public OptionalDouble readyAt(UUID mat, LocalDate day) {
        return on(ready.get(mat), day);
    }

    private OptionalDouble on(double @Nullable [] onDays, LocalDate day) {
        long offset = offset(day);
        if (onDays == null || offset < 0 || offset >= days || Double.isNaN(onDays[(int) offset])) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(onDays[(int) offset]);
    }

    /** Puts what was offered on the board, so that the next offer respects it. */
    public void accept(SpaceOffer offer) {
        take(offer.placeId(), offer.slot(), offer.from(), offer.to());
        offer.warm().runs().forEach(run -> setPoint(offer.mat().id(), run.from(), run.to(), run.celsius()));
    }

    private int index(LocalDate day) {
        return (int) Math.max(0, Math.min(days, offset(day)));
    }

    /** Asked for each day of each place that is tried: counting from one day to another costs several times as much. */
    private long offset(LocalDate day) {
        return day.toEpochDay() - firstEpochDay;
    }
}
