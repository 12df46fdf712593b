package warmshelf.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What of a lot is whose: the one judge of how many of its seeds somebody may still plan on, give away, offer or take.
 *
 * @param holds what sowings that are not sown yet will use, the oldest first
 */
public record LotBalance(Lot lot, Sharing sharing, List<SeedHold> holds) {
    public LotBalance {
        holds = List.copyOf(holds);
    }

    /** A sowing for which the lot has fewer seeds than were promised to it. */
    public record Shortfall(SeedHold hold, int there) {
        /** How many seeds it lacks. */
        public int lacking() {
            return hold.seeds() - there;
        }
    }

    /** Seeds that sowings will use, those that wait for the owner's answer included. */
    public int spokenFor() {
        return holds.stream().mapToInt(SeedHold::seeds).sum();
    }

    /** Seeds anybody may take now; never what is promised to a sowing. */
    public int offered() {
        Integer counted = lot.seedsLeft();
        return counted == null ? lot.offered() : Math.min(lot.offered(), Math.max(0, counted - promised()));
    }

    /** Whether the owner has to be asked before this member sows of it; the group's own seed is everybody's. */
    public boolean isAskedFor(UUID member) {
        return lot.ownerId() != null && !lot.ownerId().equals(member) && !sharing.withoutAsking();
    }

    /**
     * Seeds this member may plan on; null: nobody has counted, so no number can be said. An owner comes before what others
     * have only asked for, and may use what is kept back.
     */
    public @Nullable Integer freeFor(UUID member) {
        return member.equals(lot.ownerId())
                ? without(promised() + offered())
                : without(spokenFor() + offered() + sharing.keptBack());
    }

    /** Whether nothing at all is left for this member to plan on. */
    public boolean isUsedUpFor(UUID member) {
        Integer free = freeFor(member);
        return free != null && free == 0;
    }

    /** Seeds the owner can give to a request that waits; null: nobody has counted. */
    public @Nullable Integer canBeGiven() {
        return without(promised() + offered() + sharing.keptBack());
    }

    /** Seeds that can be offered to everybody, those that are already included; null: nobody has counted. */
    public @Nullable Integer canBeOffered() {
        return without(promised() + sharing.keptBack());
    }

    /** Whose plans the lot cannot meet, who asked first coming first. */
    public List<Shortfall> shortfalls() {
        Integer counted = lot.seedsLeft();
        if (counted == null) {
            return List.of();
        }
        List<Shortfall> shortfalls = new ArrayList<>();
        int left = counted;
        for (SeedHold hold : holds) {
            if (hold.waitsForOwner()) {
                continue;
            }
            int there = Math.min(left, hold.seeds());
            left -= there;
            if (there < hold.seeds()) {
                shortfalls.add(new Shortfall(hold, there));
            }
        }
        return shortfalls;
    }

    /** The same without what one sowing holds, as it is judged for that sowing itself. */
    public LotBalance without(UUID sowingId) {
        return new LotBalance(
                lot,
                sharing,
                holds.stream().filter(hold -> !hold.sowingId().equals(sowingId)).toList());
    }

    private int promised() {
        return holds.stream()
                .filter(hold -> !hold.waitsForOwner())
                .mapToInt(SeedHold::seeds)
                .sum();
    }

    private @Nullable Integer without(int seeds) {
        Integer counted = lot.seedsLeft();
        return counted == null ? null : Math.max(0, counted - seeds);
    }
}
