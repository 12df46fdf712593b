package warmshelf.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.util.UUID;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class PromiseStoreContract extends StoreContract {
    private static final NewPromise COMPOST = new NewPromise(SupplyItem.SOWING_COMPOST, 20_000, false, "peat-free");

    private PromiseStore promises;
    private UUID tom;

    @BeforeEach
    void moveIn() {
        promises = new PromiseStore(database(), audit());
        tom = new GrowRoom(database(), audit()).tom();
    }

    @Test
    void a_promise_stands_with_whose_it_is_however_often_it_is_sent() {
        UUID id = UUID.randomUUID();

        promises.add(id, 2027, COMPOST, tom);
        promises.add(id, 2027, COMPOST, tom);

        Promise kept = new Promise(id, SupplyItem.SOWING_COMPOST, 20_000, tom, "Tom", "peat-free", false);
        assertThat(promises.ofSeason(2027)).containsExactly(kept);
        assertThat(promises.ofSeason(2028)).isEmpty();
        assertThat(lines("promise")).isEqualTo(1);
    }

    @Test
    void what_is_in_the_cupboard_is_nobodys_and_there() {
        UUID id = UUID.randomUUID();

        promises.add(id, 2027, new NewPromise(SupplyItem.POTS, 30, true, ""), tom);

        assertThat(promises.find(id)).contains(new Promise(id, SupplyItem.POTS, 30, null, null, "", true));
    }

    @Test
    void a_promise_is_brought_once_and_counts_no_more_when_it_is_taken_back() {
        UUID id = UUID.randomUUID();
        promises.add(id, 2027, COMPOST, tom);

        promises.bring(id, tom);
        promises.bring(id, tom);
        assertThat(promises.find(id).orElseThrow().brought()).isTrue();
        assertThat(lines("bring")).isEqualTo(1);

        promises.takeBack(id, tom);
        promises.takeBack(id, tom);
        assertThat(promises.find(id)).isEmpty();
        assertThat(promises.ofSeason(2027)).isEmpty();
        assertThat(lines("take back")).isEqualTo(1);
    }

    @Test
    void whoever_has_left_brings_nothing_more_but_what_they_brought_is_there() {
        MemberStore members = new MemberStore(database(), audit());
        UUID priya = members.add(
                database().sql(), new NewMember("Priya Leaving", "US", "55811", "none"), false, "for a test");
        UUID brought = UUID.randomUUID();
        promises.add(brought, 2027, COMPOST, priya);
        promises.bring(brought, priya);
        promises.add(UUID.randomUUID(), 2027, COMPOST, priya);

        database().sql().transaction(inside -> members.leave(inside.dsl(), priya, tom));

        assertThat(promises.ofSeason(2027)).extracting(Promise::id).containsExactly(brought);
        members.comeBack(priya, tom);
        assertThat(promises.ofSeason(2027)).hasSize(2);
    }

    @Test
    void an_amount_is_changed_only_by_who_has_seen_the_latest() {
        UUID id = UUID.randomUUID();
        promises.add(id, 2027, COMPOST, tom);

        assertThat(promises.change(id, 20_000, 25_000, tom)).isEqualTo(new Decision.Done<>(25_000.0));
        assertThat(promises.change(id, 20_000, 30_000, tom)).isEqualTo(new Decision.Overtaken<>(new PromiseChanged()));
        assertThat(promises.find(id).orElseThrow().amount()).isEqualTo(25_000);
        promises.takeBack(id, tom);
        assertThat(promises.change(id, 25_000, 30_000, tom)).isEqualTo(new Decision.Overtaken<>(new PromiseChanged()));
        assertThat(promises.isTakenBack(id)).isTrue();
        assertThat(lines("change")).isEqualTo(1);
    }

    @Test
    void a_mark_by_mistake_is_undone_but_what_lies_in_the_cupboard_stays_there() {
        UUID id = UUID.randomUUID();
        UUID stock = UUID.randomUUID();
        promises.add(id, 2027, COMPOST, tom);
        promises.add(stock, 2027, new NewPromise(SupplyItem.POTS, 30, true, ""), tom);
        promises.bring(id, tom);

        promises.unbring(id, tom);
        promises.unbring(id, tom);
        promises.unbring(stock, tom);

        assertThat(promises.find(id).orElseThrow().brought()).isFalse();
        assertThat(promises.find(stock).orElseThrow().brought()).isTrue();
        assertThat(lines("not brought")).isEqualTo(1);
    }

    @Test
    void the_database_takes_no_promise_of_nothing() {
        NewPromise nothing = new NewPromise(SupplyItem.POTS, 0, false, "");

        assertThatThrownBy(() -> promises.add(UUID.randomUUID(), 2027, nothing, tom))
                .isInstanceOf(DataAccessException.class);
    }

    private int lines(String action) {
        return database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq(action));
    }
}
