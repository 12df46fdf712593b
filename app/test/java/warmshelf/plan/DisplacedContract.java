package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.decision.Reach;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.placing.LyingStay;
import warmshelf.placing.LyingStore;
import warmshelf.placing.MoveOutlook;
import warmshelf.placing.MoveStore;
import warmshelf.shelf.MatDraft;
import warmshelf.shelf.MatStore;
import warmshelf.shelf.QuarantineStore;
import warmshelf.shelf.ShelfDraft;
import warmshelf.shelf.ShelfStore;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/** Mat M2 goes out of service; on M1 one place is taken by something that keeps it at 26 °C. */
abstract class DisplacedContract extends StoreContract {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Slot LEFT = new Slot(1, 2);
    private static final Slot RIGHT = new Slot(3, 2);
    private static final Slot WHOLE = new Slot(1, 4);

    private GrowRoom room;
    private SowingStores stores;
    private OutageDecisionStore outs;
    private DisplacedList displaced;
    private MoveStore moves;
    private LyingStore lying;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stores = SowingStores.over(database(), audit(), FrostSource.bundledOnly());
        outs = new OutageDecisionStore(database(), audit());
        displaced = new DisplacedList(stores, outs, new QuickPlanner());
        moves = new MoveStore(database(), audit(), stores.stays(), stores.requests());
        lying = new LyingStore(database(), stores.crops(), stores.space());
        lay(room.tomsPeppers(), room.m1Place1(), WHOLE, 26, new Band(24, 30));
    }

    @Test
    void what_is_proposed_is_what_is_saved() {
        UUID first = lay(room.tomsPeppers(), room.m2Place1(), LEFT, 21, new Band(20, 28));
        UUID second = lay(room.priyasTomatoes(), room.m2Place1(), RIGHT, 21, new Band(20, 28));
        OutageDecisionStore.Out out = out();

        DisplacedList.Proposals proposals = displaced.proposals(out, TODAY, Reach.WHOLE_GROUP);

        assertThat(proposals.placed()).hasSize(2).allMatch(DisplacedList.Proposal::alone);
        assertThat(proposals.mostProven()).isTrue();
        done(moves.moveAll(
                proposals.placed().stream().map(DisplacedList.Proposal::change).toList(), TODAY, room.priya()));
        for (DisplacedList.Proposal proposal : proposals.stays()) {
            MoveOutlook then = Objects.requireNonNull(proposal.then());
            LyingStay now = lying.find(proposal.lying().stay().id()).orElseThrow();
            assertThat(now.stay().placeId())
                    .isEqualTo(room.m1Place2())
                    .isEqualTo(then.spot().placeId());
            assertThat(now.stay().slot()).isEqualTo(then.spot().slot());
            assertThat(now.stay().from()).isEqualTo(then.spot().from());
            assertThat(now.stay().to()).isEqualTo(then.spot().to());
            assertThat(now.warm()).isEqualTo(then.warm());
        }
        assertThat(List.of(first, second))
                .allSatisfy(
                        id -> assertThat(lying.find(id).orElseThrow().celsius()).isEqualTo(26));
        assertThat(displaced.proposals(out, TODAY, Reach.WHOLE_GROUP).stays()).isEmpty();
    }

    @Test
    void what_cannot_bear_the_other_mat_stays_and_is_told_why() {
        UUID cool = lay(room.priyasTomatoes(), room.m2Place1(), LEFT, 21, new Band(18, 22));

        DisplacedList.Proposals proposals = displaced.proposals(out(), TODAY, Reach.WHOLE_GROUP);

        assertThat(proposals.mostProven()).isTrue();
        assertThat(proposals.stays()).singleElement().satisfies(proposal -> {
            assertThat(proposal.lying().stay().id()).isEqualTo(cool);
            assertThat(proposal.then()).isNull();
            assertThat(proposal.lack()).isInstanceOfSatisfying(NoOtherPlace.SetOtherwise.class, lack -> {
                assertThat(lack.mat().name()).isEqualTo("M1");
                assertThat(lack.placeNumber()).isEqualTo(2);
                assertThat(lack.obstacle().celsius()).isEqualTo(26);
            });
        });
    }

    @Test
    void a_quarantine_mat_is_offered_to_nothing_ordinary_and_only_another_one_to_what_lies_there() {
        UUID m3 = anotherShelfWithMat();
        UUID ordinary = lay(room.tomsPeppers(), room.m2Place1(), WHOLE, 21, new Band(20, 28));
        lay(room.priyasTomatoes(), room.m1Place2(), WHOLE, 26, new Band(24, 30));
        UUID apart = shelfOf(m3);
        QuarantineStore quarantine = new QuarantineStore(database().sql(), audit());

        quarantine.name(apart, true, room.priya());
        assertThat(displaced.proposals(out(), TODAY, Reach.WHOLE_GROUP).stays())
                .singleElement()
                .satisfies(proposal -> {
                    assertThat(proposal.lying().stay().id()).isEqualTo(ordinary);
                    assertThat(proposal.then()).isNull();
                });

        quarantine.name(apart, false, room.priya());
        assertThat(displaced.proposals(out(), TODAY, Reach.WHOLE_GROUP).placed())
                .singleElement()
                .satisfies(proposal -> assertThat(Objects.requireNonNull(Objects.requireNonNull(proposal.then())
                                        .place()
                                        .mat())
                                .name())
                        .isEqualTo("M3"));

        quarantine.name(shelfOf(room.m2()), true, room.priya());
        assertThat(displaced.proposals(out(), TODAY, Reach.WHOLE_GROUP).stays())
                .singleElement()
                .satisfies(proposal -> assertThat(proposal.then()).isNull());
    }

    private UUID shelfOf(UUID mat) {
        return database()
                .sql()
                .select(MAT.SHELF_ID)
                .from(MAT)
                .where(MAT.ID.eq(mat))
                .fetchSingle(MAT.SHELF_ID);
    }

    private UUID anotherShelfWithMat() {
        UUID rack = database().sql().select(RACK.ID).from(RACK).fetchSingle(RACK.ID);
        UUID shelf = done(new ShelfStore(database().sql(), audit()).add(rack, new ShelfDraft(3, 0, 0), room.priya()));
        return done(new MatStore(database().sql(), audit())
                .add(shelf, new MatDraft("M3", 1, 1, 20, 32, 45, 26), room.priya()));
    }

    private OutageDecisionStore.Out out() {
        return outs.find(outs.takeOut(room.m2(), TODAY, TODAY.plusDays(60), "Broken.", room.tom()))
                .orElseThrow();
    }

    private UUID lay(UUID sowing, UUID place, Slot slot, int celsius, Band band) {
        PlaceAndDays spot = new PlaceAndDays(place, slot, TODAY.plusDays(9), TODAY.plusDays(30));
        return database()
                .sql()
                .transactionResult(tx -> stores.stays().layOnMat(tx.dsl(), sowing, spot, celsius, band, room.priya()));
    }
}
