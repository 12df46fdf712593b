package warmshelf.sowing;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.decision.Decision;
import warmshelf.seed.LotBalance;
import warmshelf.seed.NewLot;
import warmshelf.seed.Sharing;
import warmshelf.sowing.SeedClaimStore.Held;
import warmshelf.testing.Crops;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.Units;

abstract class SeedClaimContract extends StoreContract {
    private GrowRoom room;
    private SeedClaimStore claims;
    private LotRequestStore asked;
    private RequestStore requests;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        claims = room.claims();
        asked = new LotRequestStore(database(), audit());
        requests = new RequestStore(database(), audit());
    }

    @Test
    void seed_is_promised_once_and_the_second_is_told_what_is_left() {
        UUID lot = lot(34, null);

        assertThat(claim(sowing(lot, room.tom(), 26))).isInstanceOf(Decision.Done.class);
        Decision<Held> second = claim(sowing(lot, room.priya(), 13));

        assertThat(second.refusal().orElseThrow())
                .isInstanceOf(SowingRefusal.TooFewSeeds.class)
                .extracting(reason -> reason.words(Units.METRIC), as(STRING))
                .startsWith("This lot has 34 seeds; 26 are spoken for, so 8 are free for you, and 13 are wanted.");
        assertThat(balance(lot).spokenFor()).isEqualTo(26);
        assertThat(claim(sowing(lot, room.priya(), 8))).isInstanceOf(Decision.Done.class);
    }

    @Test
    void of_two_who_want_the_last_seeds_at_once_one_gets_them() throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 15; round++) {
                UUID lot = lot(20, null);
                CyclicBarrier together = new CyclicBarrier(2);

                List<Decision<Held>> answers = new ArrayList<>();
                for (Future<Decision<Held>> answer : people.invokeAll(
                        List.of(wanting(together, lot, room.tom()), wanting(together, lot, room.priya())))) {
                    answers.add(answer.get());
                }

                assertThat(answers).filteredOn(Decision.Done.class::isInstance).hasSize(1);
                assertThat(answers)
                        .filteredOn(Decision.Refused.class::isInstance)
                        .hasSize(1);
                assertThat(balance(lot).shortfalls()).isEmpty();
            }
        } finally {
            people.shutdownNow();
        }
    }

    @Test
    void looking_first_and_writing_later_would_promise_it_twice() {
        UUID lot = lot(20, null);
        Integer tomSees = balance(lot).freeFor(room.tom());
        Integer priyaSees = balance(lot).freeFor(room.priya());

        // Both saw enough, and both write: what the claims above have to prevent, seen by the same measure.
        assertThat(List.of(tomSees, priyaSees)).allMatch(free -> free >= 12);
        room.sowings().add(database().sql(), sowing(lot, room.tom(), 12), room.tom());
        room.sowings().add(database().sql(), sowing(lot, room.priya(), 12), room.priya());

        assertThat(balance(lot).shortfalls()).hasSize(1);
    }

    @Test
    void a_withdrawn_or_refused_sowing_gives_its_seed_free_and_a_placed_one_does_not() {
        UUID lot = lot(40, null);
        Sowing withdrawn = kept(sowing(lot, room.tom(), 10));
        Sowing refused = kept(sowing(lot, room.tom(), 10));
        Sowing placed = kept(sowing(lot, room.tom(), 10));
        decide(request(refused), SpaceRequest.State.REFUSED);
        decide(request(placed), SpaceRequest.State.PLACED);
        request(withdrawn);
        assertThat(balance(lot).spokenFor()).isEqualTo(20);

        StayStore stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        new HistoryStore(database(), audit(), room.sowings(), new EntryStore(audit()), requests, stays)
                .withdraw(withdrawn.id(), room.tom());

        assertThat(balance(lot).holds()).extracting("sowingId").containsExactly(placed.id());
    }

    @ParameterizedTest
    @EnumSource(
            value = SowingStage.class,
            names = {"CHILLED", "SOAKED"})
    void chilled_and_soaked_seed_is_out_of_its_packet_even_where_its_place_was_refused(SowingStage stage) {
        UUID lot = lot(40, null);
        Sowing sowing = kept(sowing(lot, room.tom(), 10));
        decide(request(sowing), SpaceRequest.State.REFUSED);

        room.sowings().moveTo(database().sql(), sowing.id(), stage);

        assertThat(balance(lot).spokenFor()).isEqualTo(10);
    }

    @Test
    void seed_of_another_member_waits_for_the_owners_answer_and_is_held_meanwhile() {
        UUID lot = lot(34, room.tom());
        Sowing hers = sowing(lot, room.priya(), 12);

        assertThat(done(claim(hers)).asked()).isEqualTo(new SeedClaimStore.Owner(room.tom(), "Tom"));

        assertThat(find(hers).isWaiting()).isTrue();
        assertThat(balance(lot).holds()).hasSize(1).first().matches(hold -> hold.waitsForOwner());
        assertThat(done(claims.answer(hers.id(), 12, "", room.tom()))).isEqualTo(hers.id());
        assertThat(find(hers).isGranted()).isTrue();
        assertThat(balance(lot).holds()).hasSize(1).first().matches(hold -> !hold.waitsForOwner());
        assertThat(claims.answer(hers.id(), 0, "", room.tom()).refusal())
                .as("answered once")
                .contains(new SowingRefusal.NeedsNoAnswer());
    }

    @Test
    void nobody_is_asked_where_members_take_what_they_need() {
        UUID lot = lot(34, room.tom());
        room.balances().share(lot, new Sharing(10, true), room.tom());

        assertThat(claim(sowing(lot, room.priya(), 24))).isInstanceOf(Decision.Done.class);
        assertThat(claim(sowing(lot, room.priya(), 1)))
                .as("what is kept back stays")
                .isInstanceOf(Decision.Refused.class);
        assertThat(claim(sowing(lot, room.tom(), 10)))
                .as("but not for its owner")
                .isInstanceOf(Decision.Done.class);
    }

    @Test
    void fewer_seeds_given_are_fewer_sown() {
        UUID lot = lot(34, room.tom());
        Sowing hers = kept(sowing(lot, room.priya(), 12));

        claims.answer(hers.id(), 5, "the rest is promised", room.tom());

        assertThat(room.sowings().find(hers.id()).orElseThrow())
                .extracting(Sowing::seeds, Sowing::cells)
                .containsExactly(5, 5);
        assertThat(find(hers))
                .extracting(LotRequest::given, LotRequest::asked, LotRequest::reason)
                .containsExactly(5, 12, "the rest is promised");
        assertThat(balance(lot).spokenFor()).isEqualTo(5);
    }

    @Test
    void a_no_leaves_the_sowing_without_seed_until_another_lot_is_chosen() {
        UUID toms = lot(34, room.tom());
        Sowing hers = kept(sowing(toms, room.priya(), 12));

        claims.answer(hers.id(), 0, "for the school", room.tom());

        assertThat(find(hers).isWithoutSeed()).isTrue();
        assertThat(balance(toms).spokenFor()).isZero();
        UUID groups = lot(20, null);
        Decision<Held> chosen = claims.choose(
                hers.id(),
                room.lots().find(groups).orElseThrow(),
                new SeedPlan(14, 14, 0.9, 8, false, null),
                room.priya());
        assertThat(done(chosen).asked()).isNull();
        assertThat(asked.find(hers.id())).isEmpty();
        assertThat(balance(groups).spokenFor()).isEqualTo(14);
        assertThat(room.sowings().find(hers.id()).orElseThrow().lotId()).isEqualTo(groups);
    }

    @Test
    void the_owner_cannot_give_what_is_promised_or_kept_back() {
        UUID lot = lot(30, room.tom());
        Sowing hers = kept(sowing(lot, room.priya(), 12));
        room.balances().share(lot, new Sharing(10, false), room.tom());
        kept(sowing(lot, room.tom(), 15));

        assertThat(claims.answer(hers.id(), 6, "", room.tom()).refusal().orElseThrow())
                .isInstanceOf(SowingRefusal.TooManyToGive.class);
        assertThat(find(hers).isWaiting()).isTrue();
        assertThat(done(claims.answer(hers.id(), 5, "", room.tom()))).isEqualTo(hers.id());
    }

    @Test
    void what_was_not_counted_can_be_asked_for_and_given() {
        UUID lot = lot(null, room.tom());
        Sowing hers = kept(sowing(lot, room.priya(), 12));

        assertThat(done(claims.answer(hers.id(), 12, "", room.tom()))).isEqualTo(hers.id());
        assertThat(balance(lot).spokenFor()).isEqualTo(12);
    }

    @Test
    void a_sowing_that_comes_back_gets_its_seed_only_if_it_is_still_there() {
        UUID lot = lot(20, null);
        Sowing first = kept(sowing(lot, room.tom(), 12));
        SpaceRequest refused = decide(request(first), SpaceRequest.State.REFUSED);
        kept(sowing(lot, room.priya(), 12));

        SeedAgain said = again(first);
        decide(refused, SpaceRequest.State.WAITING);

        assertThat(said).isEqualTo(SeedAgain.GONE_TO_OTHERS);
        assertThat(find(first).isWithoutSeed()).isTrue();
        assertThat(balance(lot).spokenFor()).isEqualTo(12);
    }

    @Test
    void a_sowing_that_comes_back_in_time_has_its_seed_again() {
        UUID lot = lot(24, null);
        Sowing first = kept(sowing(lot, room.tom(), 12));
        SpaceRequest refused = decide(request(first), SpaceRequest.State.REFUSED);
        kept(sowing(lot, room.priya(), 12));

        assertThat(again(first)).isEqualTo(SeedAgain.HELD);
        decide(refused, SpaceRequest.State.WAITING);

        assertThat(balance(lot).spokenFor()).isEqualTo(24);
        assertThat(asked.find(first.id())).isEmpty();
    }

    private Callable<Decision<Held>> wanting(CyclicBarrier together, UUID lot, UUID member) {
        return () -> {
            together.await();
            return claim(sowing(lot, member, 12));
        };
    }

    private Decision<Held> claim(Sowing sowing) {
        UUID by = sowing.grower().memberId();
        return Decision.of(() -> database()
                .sql()
                .transactionResult(inside ->
                        claims.claim(inside.dsl(), sowing, () -> room.sowings().add(inside.dsl(), sowing, by), by)));
    }

    private Sowing kept(Sowing sowing) {
        done(claim(sowing));
        return sowing;
    }

    private SeedAgain again(Sowing sowing) {
        return database().sql().transactionResult(inside -> claims.claimAgain(inside.dsl(), sowing, room.tom()));
    }

    private SpaceRequest request(Sowing sowing) {
        LocalDate day = LocalDate.of(2027, 3, 10);
        requests.add(
                database().sql(),
                new SpaceRequest(
                        sowing.id(),
                        SpaceRequest.State.WAITING,
                        day,
                        day,
                        day.plusDays(5),
                        10,
                        2,
                        new Band(24, 30),
                        false,
                        "",
                        1));
        return requests.find(sowing.id()).orElseThrow();
    }

    private SpaceRequest decide(SpaceRequest request, SpaceRequest.State state) {
        assertThat(requests.decide(database().sql(), request, state, "", room.tom()))
                .isEqualTo(new Decision.Done<>(state));
        return requests.find(request.sowingId()).orElseThrow();
    }

    private LotRequest find(Sowing sowing) {
        return asked.find(sowing.id()).orElseThrow();
    }

    private LotBalance balance(UUID lot) {
        return room.balances().of(room.lots().find(lot).orElseThrow());
    }

    private UUID lot(@Nullable Integer seeds, @Nullable UUID owner) {
        return room.lots().add(new NewLot("pepper", "Lantern Row", 2026, seeds, owner, false, ""), room.tom());
    }

    private Sowing sowing(UUID lot, UUID member, int seeds) {
        String name = member.equals(room.tom()) ? "Tom" : "Priya";
        return new Sowing(
                UUID.randomUUID(),
                new Sowing.Grower(member, name, "US", "55804"),
                2027,
                SeasonPart.SPRING,
                Crops.PEPPER,
                lot,
                "Lantern Row",
                false,
                8,
                Method.CELLS,
                true,
                Container.HALF_TRAY,
                seeds,
                1,
                seeds,
                0.1,
                null,
                SowingStage.PLANNED,
                "",
                1,
                null);
    }
}
