package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Method;
import warmshelf.decision.Decision;
import warmshelf.frost.evidence.EvidenceStore;
import warmshelf.seed.Lot;
import warmshelf.seed.NewLot;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.Decided;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

abstract class TrialStoreContract extends StoreContract {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 6);
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final List<TrialWay> WAYS =
            List.of(new TrialWay("A", Method.CELLS, true, 24, false), new TrialWay("B", Method.CELLS, true, 28, false));

    private GrowRoom room;
    private SowingStores stores;
    private TrialStore trials;
    private TrialBookStore book;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stores = SowingStores.over(database(), audit(), EvidenceStore.over(database(), audit()));
        trials = new TrialStore(
                database(),
                audit(),
                stores.sowings(),
                stores.requests(),
                stores.balances(),
                stores.claims(),
                () -> 4711);
        book = new TrialBookStore(database(), stores.lots());
    }

    private Lot lot(int seeds) {
        UUID id = room.lots().add(new NewLot("pepper", "Lantern Row", 2026, seeds, room.tom(), false, ""), room.tom());
        return room.lots().find(id).orElseThrow();
    }

    private TrialStore.BlockMaking making(Lot lot, UUID member, String name) {
        TrialPlanner planner = new TrialPlanner(stores.planner(), stores.crops(), Units.METRIC);
        TrialPlanner.Carried carried = new TrialPlanner.Carried(
                new Sowing.Grower(member, name, "US", "55804"), 2027, 0.1, TestGroup.TODAY, DAY);
        TrialPlanner.Question question = new TrialPlanner.Question(TrialKind.WARMTH, lot, WAYS, 10, 0.8);
        return (number, draw) -> planner.block(question, carried, number, draw);
    }

    private Decision<TrialStore.Declared> declare(Lot lot, int blocks) {
        TrialDesign design = new TrialDesign(TrialKind.WARMTH, lot, WAYS, 10, blocks, DAY);
        return trials.declare(design, 2027, making(lot, room.tom(), "Tom"), room.tom());
    }

    @Test
    void a_trial_is_kept_with_its_draw_its_sowings_and_what_they_ask_for() {
        Lot lot = lot(60);
        Trial trial = book.find(done(declare(lot, 2)).id(), ZONE).orElseThrow();

        assertThat(trial.number()).isEqualTo(1);
        assertThat(trial.ways()).isEqualTo(WAYS);
        assertThat(trial.declaredOn()).isEqualTo(TestGroup.TODAY);
        assertThat(trial.blocks()).hasSize(2).allSatisfy(block -> {
            assertThat(block.draw()).isEqualTo(TrialDraw.of(4711, List.of("A", "B"), 10));
            assertThat(block.sowOn()).isEqualTo(DAY);
            assertThat(block.sowings()).containsOnlyKeys("A", "B");
        });
        Sowing sowing = stores.sowings()
                .find(Objects.requireNonNull(trial.blocks().get(1).sowings().get("B")))
                .orElseThrow();
        assertThat(sowing.title()).endsWith("Lantern Row · trial 1 way B");
        assertThat(sowing.trial())
                .isNotNull()
                .satisfies(part -> assertThat(part.block()).isEqualTo(2));
        assertThat(sowing.note())
                .isEqualTo("Trial 1, way B (28 °C). Its ways lie at different warmth; keep all else alike.");
        assertThat(stores.requests().find(sowing.id()).orElseThrow()).satisfies(request -> {
            assertThat(request.earliest()).isEqualTo(DAY);
            assertThat(request.latest()).isEqualTo(DAY);
            assertThat(request.band().lowC()).isEqualTo(28);
            assertThat(request.band().highC()).isEqualTo(28);
        });
        assertThat(room.balances().of(lot).freeFor(room.tom())).isEqualTo(20);
    }

    @Test
    void numbers_count_on() {
        Lot lot = lot(200);
        assertThat(IntStream.range(0, 3).map(each -> done(declare(lot, 1)).number()))
                .containsExactly(1, 2, 3);
        assertThat(book.all(ZONE)).extracting(Trial::number).containsExactly(3, 2, 1);
    }

    @Test
    void where_the_seed_is_gone_nothing_is_kept() {
        Lot lot = lot(30);

        assertThatThrownBy(() -> done(declare(lot, 2)))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("20 are needed for a block");
        assertThat(database().sql().fetchCount(TRIAL)).isZero();
        assertThat(database().sql().fetchCount(SOWING)).isZero();
        assertThat(database().sql().fetchCount(SPACE_REQUEST)).isZero();
    }

    @Test
    void others_carry_a_block_of_their_own_once_and_its_owner_is_asked_for_the_seed() {
        Lot lot = lot(60);
        Trial trial = book.find(done(declare(lot, 1)).id(), ZONE).orElseThrow();
        TrialStore.BlockMaking hers = making(lot, room.priya(), "Priya");

        assertThat(done(trials.join(trial, 2027, DAY.plusDays(3), hers, room.priya()))
                        .owner())
                .isEqualTo("Tom");
        assertThatThrownBy(() -> done(trials.join(trial, 2027, DAY, hers, room.priya())))
                .hasMessageContaining("You carry a block of trial 1 already");
        assertThatThrownBy(() -> done(trials.join(trial, 2028, DAY, hers, room.priya())))
                .hasMessageContaining("was of the season 2027");

        Trial after = book.find(trial.id(), ZONE).orElseThrow();
        assertThat(after.blocks()).extracting(Trial.Block::member).containsExactly("Tom", "Priya");
        assertThat(after.blocks().get(1).sowOn()).isEqualTo(DAY.plusDays(3));
        assertThat(after.carriers()).isEqualTo(2);
        assertThat(database().sql().fetchCount(LOT_REQUEST)).isEqualTo(2);
    }

    @Test
    void two_presses_at_once_join_once() {
        Lot lot = lot(200);
        Trial trial = book.find(done(declare(lot, 1)).id(), ZONE).orElseThrow();
        TrialStore.BlockMaking hers = making(lot, room.priya(), "Priya");

        List<CompletableFuture<Decision<TrialStore.Joined>>> presses = IntStream.range(0, 4)
                .mapToObj(
                        each -> CompletableFuture.supplyAsync(() -> trials.join(trial, 2027, DAY, hers, room.priya())))
                .toList();

        assertThat(presses.stream().map(CompletableFuture::join).filter(Decision.Done.class::isInstance))
                .hasSize(1);
        assertThat(database().sql().fetchCount(TRIAL_SOWING)).isEqualTo(4);
    }
}
