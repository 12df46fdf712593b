package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Counted;
import warmshelf.words.Numbers;

/** What is left of a lot, and for whom, in words. */
public final class BalanceWords {
    private final LotBalance balance;

    public BalanceWords(LotBalance balance) {
        this.balance = balance;
    }

    /** For example '34, of which 26 are spoken for'. */
    public String left() {
        Integer counted = balance.lot().seedsLeft();
        int spoken = balance.spokenFor();
        if (counted == null) {
            return spoken == 0 ? SAY.notCountedYet() : SAY.notCountedSpokenFor(are(spoken));
        }
        String left = counted == 0 ? SAY.noneLeft() : Numbers.grouped(counted);
        if (spoken == 0) {
            return left;
        }
        return spoken <= counted ? SAY.leftSpokenFor(left, are(spoken)) : SAY.leftButSpokenFor(left, are(spoken));
    }

    /** For a list to choose from: whose it is, and how many seeds are free, for example 'Ana’s: 8 free, ask first'. */
    public String whoseAndFree(UUID member) {
        Lot lot = balance.lot();
        String whose = member.equals(lot.ownerId())
                ? SAY.yours()
                : lot.ownerName() == null ? SAY.theGroups() : SAY.somebodys(lot.ownerName());
        Integer free = balance.freeFor(member);
        String seeds = free == null ? SAY.notCounted() : free == 0 ? SAY.nothingFree() : SAY.free(free);
        return balance.isAskedFor(member) ? SAY.whoseAskFirst(whose, seeds) : SAY.whoseAndFree(whose, seeds);
    }

    /** What the lot has and why not all of it is free for this member, as the beginning of a sentence. */
    public String forMember(UUID member) {
        Integer counted = balance.lot().seedsLeft();
        Integer free = balance.freeFor(member);
        if (counted == null || free == null) {
            return SAY.nobodyCounted();
        }
        if (counted == 0) {
            return SAY.usedUp();
        }
        if (free.equals(counted)) {
            return SAY.lotHas(Numbers.grouped(counted));
        }
        return free == 0
                ? SAY.noneFreeForYou(Numbers.grouped(counted), held(member))
                : SAY.freeForYou(Numbers.grouped(counted), held(member), are(free));
    }

    /** How many an owner can give to a request that waits and why, up to '… at most 8'. */
    public String forGiving() {
        return forOwner(parts(promised(), true), balance.canBeGiven());
    }

    /** How many an owner can offer to everybody and why, up to '… at most 8'. */
    String forOffering() {
        return forOwner(parts(promised(), false), balance.canBeOffered());
    }

    private String forOwner(List<String> parts, @Nullable Integer most) {
        Integer counted = balance.lot().seedsLeft();
        String has = SAY.ownersLotHas(Numbers.grouped(counted == null ? 0 : counted));
        String atMost = Numbers.grouped(most == null ? 0 : most);
        return parts.isEmpty() ? SAY.soAtMost(has, atMost) : SAY.becauseSoAtMost(has, Counted.all(parts), atMost);
    }

    private String held(UUID member) {
        boolean own = member.equals(balance.lot().ownerId());
        return Counted.all(own ? ownParts() : parts(balance.spokenFor(), true));
    }

    private List<String> ownParts() {
        List<String> parts = new ArrayList<>();
        add(parts, promised(), SAY::partSpokenFor);
        add(parts, balance.offered(), SAY::partOffered);
        return parts;
    }

    private List<String> parts(int spoken, boolean withOffer) {
        List<String> parts = new ArrayList<>();
        add(parts, spoken, SAY::partSpokenFor);
        add(parts, balance.sharing().keptBack(), SAY::partKeptBack);
        add(parts, withOffer ? balance.offered() : 0, SAY::partOffered);
        return parts;
    }

    private int promised() {
        return balance.holds().stream()
                .filter(hold -> !hold.waitsForOwner())
                .mapToInt(SeedHold::seeds)
                .sum();
    }

    private static void add(List<String> parts, int seeds, UnaryOperator<String> what) {
        if (seeds > 0) {
            parts.add(what.apply(are(seeds)));
        }
    }

    private static String are(int seeds) {
        return Counted.of(seeds, "is", "are");
    }
}
