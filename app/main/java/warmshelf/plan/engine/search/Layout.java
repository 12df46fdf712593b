package warmshelf.plan.engine.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.FixedStay;

/** A plan in the making: what lies where, how warm each mat may be on each day, and what that is worth. Keeps every rule. */
final class Layout {
    final IndexedQuestion ground;
    final Occupancy occupancy;
    /** By mat and day, the set-points that suit all that lies there. */
    private final long[][] common;

    private final long[][] commonOfFixed;
    private final int[][] lying;
    private final int[][] load;
    private final @Nullable TrialPlacement[] spots;
    private final StayList[] onMat;
    private final int[] placedOfPair;
    private final int[] membersByRank;
    private int placed;
    private long shiftDays;
    private long warmedDays;

    Layout(IndexedQuestion ground) {
        this.ground = ground;
        occupancy = new Occupancy(ground.places, ground.days);
        lying = new int[ground.mats][ground.days];
        load = new int[ground.continuousWatts.length][ground.days];
        commonOfFixed = new long[ground.mats][];
        common = new long[ground.mats][];
        spots = new TrialPlacement[ground.asks.size()];
        onMat = new StayList[ground.mats];
        placedOfPair = new int[ground.members];
        membersByRank = new int[ground.ranks];
        for (int mat = 0; mat < ground.mats; mat++) {
            commonOfFixed[mat] = ground.thermostat[mat].clone();
            onMat[mat] = new StayList();
        }
        ground.question.fixed().forEach(this::fix);
        for (int mat = 0; mat < ground.mats; mat++) {
            common[mat] = commonOfFixed[mat].clone();
        }
    }

    @Nullable
    TrialPlacement spot(int ask) {
        return spots[ask];
    }

    StayList onMat(int mat) {
        return onMat[mat];
    }

    int placed() {
        return placed;
    }

    long shiftDays() {
        return shiftDays;
    }

    long warmedDays() {
        return warmedDays;
    }

    /** The set-points that suit all that lies on a mat on a day. */
    long common(int mat, int day) {
        return common[mat][day];
    }

    boolean isWarm(int mat, int day) {
        return lying[mat][day] > 0;
    }

    /** Whether something with these set-points could lie on a mat on a day, as far as warmth and current go. */
    boolean bears(int mat, int day, long degrees) {
        if ((common[mat][day] & degrees) == 0) {
            return false;
        }
        int circuit = ground.circuit[mat];
        return circuit < 0
                || lying[mat][day] > 0
                || load[circuit][day] + ground.watts[mat] <= ground.continuousWatts[circuit];
    }

    /** Whether only the circuit stands in the way on a day. */
    boolean circuitIsFull(int mat, int day, long degrees) {
        return (common[mat][day] & degrees) != 0 && !bears(mat, day, degrees);
    }

    /** What one more stay would add for fairness: whether it is the first of its member and choice. */
    boolean isFirstOfPair(IndexedRequest ask) {
        return placedOfPair[ask.member()] == 0;
    }

    void put(IndexedRequest ask, TrialPlacement spot) {
        spots[ask.index()] = spot;
        onMat[spot.mat()].add(ask.index());
        occupancy.flip(spot.mat(), spot.place(), spot.mask(), spot.from(), spot.to());
        if (spot.litSurface() >= 0) {
            occupancy.flip(spot.litSurface(), spot.litPlace(), spot.litMask(), spot.to(), spot.litTo());
        }
        for (int day = spot.from(); day < spot.to(); day++) {
            common[spot.mat()][day] &= spot.warm();
            if (lying[spot.mat()][day]++ == 0) {
                heat(spot.mat(), day, 1);
            }
        }
        placed++;
        shiftDays += Math.abs(spot.from() - ask.ideal());
        if (placedOfPair[ask.member()]++ == 0) {
            membersByRank[ask.rank()]++;
        }
    }

    /** Takes a request off its mat and says where it lay. */
    TrialPlacement lift(IndexedRequest ask) {
        TrialPlacement spot = spots[ask.index()];
        if (spot == null) {
            throw new IllegalStateException("a request that lies nowhere cannot be lifted");
        }
        spots[ask.index()] = null;
        onMat[spot.mat()].remove(ask.index());
        occupancy.flip(spot.mat(), spot.place(), spot.mask(), spot.from(), spot.to());
        if (spot.litSurface() >= 0) {
            occupancy.flip(spot.litSurface(), spot.litPlace(), spot.litMask(), spot.to(), spot.litTo());
        }
        for (int day = spot.from(); day < spot.to(); day++) {
            if (--lying[spot.mat()][day] == 0) {
                heat(spot.mat(), day, -1);
            }
        }
        meetAgain(spot.mat(), spot.from(), spot.to());
        placed--;
        shiftDays -= Math.abs(spot.from() - ask.ideal());
        if (--placedOfPair[ask.member()] == 0) {
            membersByRank[ask.rank()]--;
        }
        return spot;
    }

    /** Turns of the thermostat are counted only here, since they decide last. */
    Score score() {
        return new Score(membersByRank.clone(), placed, shiftDays, warmedDays, SetPointRuns.turns(this));
    }

    /** The score without the turns, to see cheaply whether the exact one is worth counting. */
    Score scoreAtBest() {
        return new Score(membersByRank.clone(), placed, shiftDays, warmedDays, 0);
    }

    @Nullable
    TrialPlacement[] snapshot() {
        return spots.clone();
    }

    void restore(@Nullable TrialPlacement[] wanted) {
        for (IndexedRequest ask : ground.asks) {
            if (spots[ask.index()] != null) {
                lift(ask);
            }
        }
        for (IndexedRequest ask : ground.asks) {
            TrialPlacement spot = wanted[ask.index()];
            if (spot != null) {
                put(ask, spot);
            }
        }
    }

    private void meetAgain(int mat, int from, int to) {
        long[] days = common[mat];
        System.arraycopy(commonOfFixed[mat], from, days, from, to - from);
        StayList stays = onMat[mat];
        for (int i = 0; i < stays.size(); i++) {
            TrialPlacement other = spots[stays.get(i)];
            if (other != null) {
                int end = Math.min(to, other.to());
                for (int day = Math.max(from, other.from()); day < end; day++) {
                    days[day] &= other.warm();
                }
            }
        }
    }

    private void heat(int mat, int day, int sign) {
        warmedDays += sign;
        if (ground.circuit[mat] >= 0) {
            load[ground.circuit[mat]][day] += sign * ground.watts[mat];
        }
    }

    private void fix(FixedStay stay) {
        Integer surface =
                stay.lit() ? ground.litIndex(stay.surface()) : ground.matIndex().get(stay.surface());
        int from = Math.max(0, ground.day(stay.days().from()));
        int to = Math.min(ground.days, ground.day(stay.days().to()));
        if (surface == null || from >= to) {
            return;
        }
        occupancy.flip(surface, stay.place() - 1, mask(stay.slot()), from, to);
        if (stay.band() != null) {
            long degrees = StayOption.degrees(stay.band());
            for (int day = from; day < to; day++) {
                commonOfFixed[surface][day] &= degrees;
                if (lying[surface][day]++ == 0) {
                    heat(surface, day, 1);
                }
            }
        }
    }

    static int mask(Slot slot) {
        return ((1 << slot.quarters()) - 1) << (slot.firstQuarter() - 1);
    }

    static Slot slot(int mask) {
        return new Slot(Integer.numberOfTrailingZeros(mask) + 1, Integer.bitCount(mask));
    }

    /** The requests on one mat, in no order. */
    static final class StayList {
        private int[] asks = new int[16];
        private int size;

        int size() {
            return size;
        }

        int get(int position) {
            return asks[position];
        }

        private void add(int ask) {
            if (size == asks.length) {
                asks = Arrays.copyOf(asks, 2 * size);
            }
            asks[size++] = ask;
        }

        private void remove(int ask) {
            for (int i = 0; i < size; i++) {
                if (asks[i] == ask) {
                    asks[i] = asks[--size];
                    return;
                }
            }
        }
    }
}
