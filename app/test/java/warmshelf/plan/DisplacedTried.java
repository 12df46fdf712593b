package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceWish;

/**
 * Tries every mat, place, slot, day and set-point for every displaced stay, slowly and plainly, where each lasts as long as one
 * set-point asks, and finds the most that can be placed together.
 */
final class DisplacedTried {
    private record Laid(MatSpace mat, int place, Slot slot, LocalDate from, LocalDate to, Set<Integer> degrees) {}

    private final SpaceCalendar others;
    private final List<SpaceWish> wishes;
    private final List<Laid> laid = new ArrayList<>();
    private int most;

    private DisplacedTried(SpaceCalendar others, List<SpaceWish> wishes) {
        this.others = others;
        this.wishes = wishes;
    }

    /** @param others the board on which none of them lies */
    static int most(SpaceCalendar others, List<SpaceWish> wishes) {
        DisplacedTried tried = new DisplacedTried(others, wishes);
        tried.from(0);
        return tried.most;
    }

    private void from(int next) {
        most = Math.max(most, laid.size());
        if (next == wishes.size()) {
            return;
        }
        SpaceWish wish = wishes.get(next);
        from(next + 1);
        for (MatSpace mat : others.mats()) {
            for (LocalDate day = wish.earliest(); !day.isAfter(wish.latest()); day = day.plusDays(1)) {
                for (Laid stay : ways(mat, wish, day)) {
                    if (fits(stay)) {
                        laid.add(stay);
                        from(next + 1);
                        laid.remove(laid.size() - 1);
                    }
                }
            }
        }
    }

    /** For each number of days that some degrees ask for, each slot of each place. */
    private static List<Laid> ways(MatSpace mat, SpaceWish wish, LocalDate day) {
        List<Laid> ways = new ArrayList<>();
        Set<Integer> lengths = new HashSet<>();
        for (int celsius = wish.band().lowC(); celsius <= wish.band().highC(); celsius++) {
            int days = wish.daysAt().applyAsInt(celsius);
            if (lengths.add(days)) {
                Set<Integer> degrees = new HashSet<>();
                for (int other = celsius; other <= wish.band().highC(); other++) {
                    if (wish.daysAt().applyAsInt(other) == days) {
                        degrees.add(other);
                    }
                }
                for (int place = 0; place < mat.places().size(); place++) {
                    for (Slot slot : Slot.of(wish.quarters())) {
                        ways.add(new Laid(mat, place, slot, day, day.plusDays(days), degrees));
                    }
                }
            }
        }
        return ways;
    }

    private boolean fits(Laid stay) {
        return others.isFree(stay.mat().places().get(stay.place()), stay.slot(), stay.from(), stay.to())
                && stay.from().datesUntil(stay.to()).allMatch(day -> fitsOn(day, stay));
    }

    private boolean fitsOn(LocalDate day, Laid stay) {
        Set<Integer> common = new HashSet<>(stay.degrees());
        for (Laid other : laid) {
            if (!other.mat().equals(stay.mat()) || day.isBefore(other.from()) || !day.isBefore(other.to())) {
                continue;
            }
            if (other.place() == stay.place() && other.slot().overlaps(stay.slot())) {
                return false;
            }
            common.retainAll(other.degrees());
        }
        OptionalDouble set = others.setPoint(stay.mat().id(), day);
        common.removeIf(celsius -> set.isPresent()
                ? set.getAsDouble() != celsius
                : !stay.mat().thermostat().contains(celsius));
        return !common.isEmpty();
    }
}
