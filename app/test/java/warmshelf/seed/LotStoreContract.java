package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.StoreContract;

abstract class LotStoreContract extends StoreContract {
    private LotStore lots;
    private UUID tom;

    @BeforeEach
    void moveIn() {
        lots = new LotStore(database(), audit());
        NewMember member = new NewMember("Tom Okafor", "US", "55804", "not a hash");
        tom = new MemberStore(database(), audit()).add(database().sql(), member, false, "for a test");
    }

    @Test
    void a_lot_comes_out_as_it_went_in() {
        UUID id = lots.add(new NewLot("pepper", "Harbour Light", 2025, 40, tom, true, "in the red tin"), tom);

        assertThat(lots.find(id))
                .contains(new Lot(
                        id,
                        "pepper",
                        "Harbour Light",
                        2025,
                        40,
                        tom,
                        "Tom",
                        true,
                        "in the red tin",
                        SeedSource.PACKET,
                        Storage.UNKNOWN,
                        0,
                        1));
    }

    @Test
    void the_groups_own_uncounted_seed_has_neither_owner_nor_count() {
        Lot lot = lots.find(add("pepper", "Harbour Light", null)).orElseThrow();

        assertThat(lot.ownerId()).isNull();
        assertThat(lot.ownerName()).isNull();
        assertThat(lot.seedsLeft()).isNull();
    }

    @Test
    void an_unknown_lot_is_not_found() {
        assertThat(lots.find(UUID.randomUUID())).isEmpty();
    }

    @Test
    void varieties_are_found_in_any_capitals_and_by_any_part() {
        add("pepper", "Harbour Light", 10);
        add("tomato", "Grandmother’s Best", 10);

        assertThat(varieties(new LotSearch("hARBOUR", List.of(), 0))).containsExactly("Harbour Light");
        assertThat(varieties(new LotSearch("best", List.of(), 0))).containsExactly("Grandmother’s Best");
    }

    @Test
    void signs_that_stand_for_anything_in_a_search_stand_for_themselves() {
        add("pepper", "Harbour Light", 10);
        add("pepper", "100% Red", 10);

        assertThat(varieties(new LotSearch("%", List.of(), 0))).containsExactly("100% Red");
        assertThat(varieties(new LotSearch("_", List.of(), 0))).isEmpty();
    }

    @Test
    void lots_of_the_crops_that_were_meant_are_found_too() {
        add("pepper", "Harbour Light", 10);
        add("tomato", "Pepperoni", 10);
        add("kale", "Old Blue", 10);

        assertThat(varieties(new LotSearch("pepper", List.of("pepper"), 0)))
                .containsExactly("Harbour Light", "Pepperoni");
    }

    @Test
    void a_page_holds_thirty_lots_and_the_next_one_goes_on_where_it_ended() {
        for (int i = 0; i < 33; i++) {
            add("kale", "Row %02d".formatted(i), 10);
        }

        assertThat(varieties(LotSearch.everything())).hasSize(31).startsWith("Row 00");
        assertThat(varieties(new LotSearch("", List.of(), 1))).containsExactly("Row 30", "Row 31", "Row 32");
    }

    @Test
    void tests_are_kept_side_by_side_the_newest_first() {
        UUID lot = add("pepper", "Harbour Light", 10);
        GerminationTest older = new GerminationTest(LocalDate.of(2026, 2, 1), 8, 10);
        GerminationTest newer = new GerminationTest(LocalDate.of(2027, 2, 1), 17, 20);

        lots.recordTest(lot, newer, tom);
        lots.recordTest(lot, older, tom);

        assertThat(lots.tests(lot)).containsExactly(newer, older);
        assertThat(lots.testsOf(List.of(lot, UUID.randomUUID()))).containsOnlyKeys(lot);
    }

    @Test
    void seeds_are_taken_to_the_last_one_and_no_further() {
        UUID lot = add("pepper", "Harbour Light", 10);

        assertThat(done(take(lot, 7))).isEqualTo(7);
        assertThat(take(lot, 4).refusal()).contains(new SeedRefusal.TooFewLeft(3, 4));
        assertThat(done(take(lot, 3))).isEqualTo(3);
        assertThat(left(lot)).isZero();
    }

    @Test
    void seeds_nobody_counted_can_be_taken_and_stay_uncounted() {
        UUID lot = add("pepper", "Harbour Light", null);

        assertThat(done(take(lot, 400))).isEqualTo(0);
        assertThat(left(lot)).isNull();
    }

    @Test
    void people_who_take_at_the_same_time_never_get_more_than_there_is() throws Exception {
        UUID lot = add("pepper", "Harbour Light", 50);
        ExecutorService people = Executors.newFixedThreadPool(8);
        List<Future<Decision<Integer>>> takings = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            takings.add(people.submit(() -> take(lot, 3)));
        }

        int taken = 0;
        for (Future<Decision<Integer>> taking : takings) {
            taken += taking.get() instanceof Decision.Done ? 1 : 0;
        }
        people.shutdown();

        assertThat(taken).isEqualTo(16); // sixteen times three is all that goes into fifty
        assertThat(left(lot)).isEqualTo(2);
    }

    @Test
    void seeds_taken_for_something_that_failed_are_put_back() {
        UUID lot = add("pepper", "Harbour Light", 10);

        assertThatThrownBy(() -> database().sql().transaction(work -> {
                    lots.take(work.dsl(), lot, 7, tom);
                    throw new IllegalStateException("the rest failed");
                }))
                .hasMessageContaining("the rest failed");

        assertThat(left(lot)).isEqualTo(10);
    }

    @Test
    void a_recount_replaces_the_figures() {
        UUID lot = add("pepper", "Harbour Light", 10);

        Decision<Integer> written = lots.recount(
                lot, new Recount(33, true, "counted twice", SeedSource.SAVED, Storage.measured(4.5, 6.5)), 1, tom);

        Lot now = lots.find(lot).orElseThrow();
        assertThat(written).isEqualTo(new Decision.Done<>(now.version()));
        assertThat(now.seedsLeft()).isEqualTo(33);
        assertThat(now.treated()).isTrue();
        assertThat(now.note()).isEqualTo("counted twice");
        assertThat(now.source()).isEqualTo(SeedSource.SAVED);
        assertThat(now.storage()).isEqualTo(Storage.measured(4.5, 6.5));
        assertThat(now.version()).isEqualTo(2);
    }

    @Test
    void a_recount_does_not_undo_what_was_taken_meanwhile() {
        UUID lot = add("pepper", "Harbour Light", 10);
        take(lot, 4);

        assertThat(lots.recount(lot, new Recount(10, false, "", SeedSource.PACKET, Storage.UNKNOWN), 1, tom))
                .isEqualTo(new Decision.Overtaken<>(new SeedRefusal.LotChanged()));
        assertThat(left(lot)).isEqualTo(6);
    }

    @Test
    void every_change_leaves_a_line_that_says_who() {
        UUID lot = add("pepper", "Harbour Light", 10);
        lots.recordTest(lot, new GerminationTest(LocalDate.of(2027, 2, 1), 8, 10), tom);
        take(lot, 4);
        take(lot, 400);
        lots.recount(lot, new Recount(9, false, "", SeedSource.PACKET, Storage.UNKNOWN), 2, tom);

        assertThat(database()
                        .sql()
                        .select(AUDIT_LINE.ACTION)
                        .from(AUDIT_LINE)
                        .where(AUDIT_LINE.SUBJECT_ID.eq(lot.toString()).and(AUDIT_LINE.MEMBER_ID.eq(tom)))
                        .fetch(AUDIT_LINE.ACTION))
                .containsExactlyInAnyOrder("add", "test", "take", "recount");
    }

    private UUID add(String cropId, String variety, @Nullable Integer seeds) {
        return lots.add(new NewLot(cropId, variety, 2026, seeds, null, false, ""), tom);
    }

    private Decision<Integer> take(UUID lot, int seeds) {
        return database().sql().transactionResult(work -> lots.take(work.dsl(), lot, seeds, tom));
    }

    private @Nullable Integer left(UUID lot) {
        return lots.find(lot).orElseThrow().seedsLeft();
    }

    private List<String> varieties(LotSearch search) {
        return lots.list(search).stream().map(Lot::variety).toList();
    }
}
