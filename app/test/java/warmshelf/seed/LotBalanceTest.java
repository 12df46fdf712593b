package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LotBalanceTest {
    private static final UUID ANA = new UUID(0, 1);
    private static final UUID TOM = new UUID(0, 2);

    @Test
    void seed_that_sowings_will_use_is_not_free_and_what_is_left_says_so() {
        LotBalance balance = of(34, null, 0, Sharing.ASKED, 20, 6);

        assertThat(balance.freeFor(TOM)).isEqualTo(8);
        assertThat(balance.spokenFor()).isEqualTo(26);
        assertThat(new BalanceWords(balance).left()).isEqualTo("34, of which 26 are spoken for");
        assertThat(new BalanceWords(balance).forMember(TOM))
                .isEqualTo("This lot has 34 seeds; 26 are spoken for, so 8 are free for you");
    }

    @Test
    void what_is_kept_back_is_for_its_owner_alone() {
        LotBalance balance = of(34, ANA, 4, new Sharing(10, false), 6);

        assertThat(balance.freeFor(TOM)).isEqualTo(34 - 6 - 10 - 4);
        assertThat(balance.freeFor(ANA)).isEqualTo(34 - 6 - 4);
        assertThat(balance.canBeGiven()).isEqualTo(34 - 6 - 10 - 4);
        assertThat(balance.canBeOffered()).isEqualTo(34 - 6 - 10);
        assertThat(new BalanceWords(balance).forMember(TOM))
                .isEqualTo("This lot has 34 seeds; 6 are spoken for, 10 are kept back and 4 are offered to everybody,"
                        + " so 14 are free for you");
        assertThat(new BalanceWords(balance).forMember(ANA))
                .isEqualTo("This lot has 34 seeds; 6 are spoken for and 4 are offered to everybody,"
                        + " so 24 are free for you");
    }

    @Test
    void only_another_members_lot_is_asked_for_unless_they_may_take_what_they_need() {
        assertThat(of(34, ANA, 0, Sharing.ASKED).isAskedFor(TOM)).isTrue();
        assertThat(of(34, ANA, 0, Sharing.ASKED).isAskedFor(ANA)).isFalse();
        assertThat(of(34, ANA, 0, new Sharing(0, true)).isAskedFor(TOM)).isFalse();
        assertThat(of(34, null, 0, Sharing.ASKED).isAskedFor(TOM)).isFalse();
    }

    @Test
    void what_is_only_asked_for_keeps_others_off_but_not_the_owner() {
        LotBalance balance = with(34, ANA, 0, Sharing.ASKED, hold(1, 30, true));

        assertThat(balance.freeFor(TOM)).isEqualTo(4);
        assertThat(balance.freeFor(ANA)).isEqualTo(34);
        assertThat(balance.canBeGiven()).as("to the one who asked").isEqualTo(34);
    }

    @Test
    void what_nobody_counted_has_no_number_but_says_how_many_are_spoken_for() {
        LotBalance balance = of(null, ANA, 0, new Sharing(5, false), 12);

        assertThat(balance.freeFor(TOM)).isNull();
        assertThat(balance.canBeGiven()).isNull();
        assertThat(balance.isUsedUpFor(TOM)).isFalse();
        assertThat(balance.shortfalls()).isEmpty();
        assertThat(new BalanceWords(balance).left()).isEqualTo("Not counted; 12 are spoken for");
    }

    @Test
    void where_too_few_are_left_who_asked_first_comes_first() {
        LotBalance balance =
                with(20, null, 0, Sharing.ASKED, hold(1, 12, false), hold(2, 12, false), hold(3, 2, false));

        assertThat(balance.shortfalls())
                .containsExactly(
                        new LotBalance.Shortfall(hold(2, 12, false), 8),
                        new LotBalance.Shortfall(hold(3, 2, false), 0));
        assertThat(balance.shortfalls().get(0).lacking()).isEqualTo(4);
        assertThat(balance.freeFor(TOM)).isZero();
        assertThat(new BalanceWords(balance).left()).isEqualTo("20, but 26 are spoken for");
    }

    @Test
    void no_more_is_offered_than_is_left_beside_what_is_promised() {
        assertThat(of(34, null, 26, Sharing.ASKED, 30).offered()).isEqualTo(4);
        assertThat(of(34, null, 4, Sharing.ASKED, 30).offered()).isEqualTo(4);
        assertThat(of(20, null, 4, Sharing.ASKED, 30).offered()).isZero();
    }

    @Test
    void one_sowing_is_judged_without_what_it_holds_itself() {
        LotBalance balance = with(12, null, 0, Sharing.ASKED, hold(1, 12, false));

        assertThat(balance.freeFor(TOM)).isZero();
        assertThat(balance.without(new UUID(7, 1)).freeFor(TOM)).isEqualTo(12);
    }

    private static LotBalance of(
            @Nullable Integer counted, @Nullable UUID owner, int offered, Sharing sharing, int... held) {
        List<SeedHold> holds = new ArrayList<>();
        for (int seeds : held) {
            holds.add(hold(holds.size(), seeds, false));
        }
        return with(counted, owner, offered, sharing, holds.toArray(SeedHold[]::new));
    }

    private static LotBalance with(
            @Nullable Integer counted, @Nullable UUID owner, int offered, Sharing sharing, SeedHold... holds) {
        Lot lot = new Lot(
                new UUID(9, 9),
                "pepper",
                "Lantern Row",
                2026,
                counted,
                owner,
                owner == null ? null : "Ana Lund",
                false,
                "",
                SeedSource.PACKET,
                Storage.UNKNOWN,
                offered,
                1);
        return new LotBalance(lot, sharing, List.of(holds));
    }

    private static SeedHold hold(int sowing, int seeds, boolean waits) {
        return new SeedHold(new UUID(7, sowing), new UUID(0, 5), "Priya", seeds, waits);
    }
}
