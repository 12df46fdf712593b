package warmshelf.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.testing.Decided.done;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
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
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

abstract class SwapStoreContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;

    private StandInStore standIns;
    private DutyStore duties;
    private SwapStore swaps;
    private WillingStore willing;
    private UUID cellar;
    private UUID bench;
    private UUID ilse;
    private UUID tom;
    private UUID priya;
    private UUID omar;

    @BeforeEach
    void moveIn() {
        standIns = new StandInStore(database(), audit());
        duties = new DutyStore(database(), audit(), standIns);
        swaps = new SwapStore(database(), audit(), standIns);
        willing = new WillingStore(database(), audit(), standIns);
        cellar = site("Hall cellar", 1);
        bench = site("Bench room", 2);
        ilse = person("Ilse Brandt");
        tom = person("Tom Okafor");
        priya = person("Priya Nair");
        omar = person("Omar Reyes");
    }

    @Test
    void whoever_says_yes_has_the_day_and_the_asker_has_the_day_in_exchange() {
        give(turn(cellar, 3), tom);
        give(turn(cellar, 5), priya);
        UUID swap = ask(turn(cellar, 3), null, turn(cellar, 5), tom);

        done(swaps.take(swap, TODAY, priya));

        assertThat(holder(turn(cellar, 3))).isEqualTo(priya);
        assertThat(holder(turn(cellar, 5))).isEqualTo(tom);
        assertThat(database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("take a swap")))
                .isEqualTo(1);
    }

    @Test
    void of_two_who_take_it_at_once_one_has_it_and_the_other_reads_who() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            for (int day = 1; day <= 15; day++) {
                Turn turn = turn(cellar, day);
                give(turn, tom);
                UUID swap = ask(turn, null, null, tom);
                CyclicBarrier together = new CyclicBarrier(3);
                List<Future<Decision<Swap>>> answers = new ArrayList<>();
                for (UUID member : List.of(ilse, priya, omar)) {
                    answers.add(threads.submit(() -> {
                        together.await();
                        return swaps.take(swap, TODAY, member);
                    }));
                }
                List<Decision<Swap>> came = new ArrayList<>();
                for (Future<Decision<Swap>> answer : answers) {
                    came.add(answer.get());
                }

                String winner = database()
                        .sql()
                        .select(MEMBER.CALLED)
                        .from(MEMBER)
                        .where(MEMBER.ID.eq(holder(turn)))
                        .fetchSingle(MEMBER.CALLED);
                assertThat(came.stream().filter(Decision.Done.class::isInstance))
                        .hasSize(1);
                assertThat(came.stream().flatMap(each -> each.refusal().stream()))
                        .hasSize(2)
                        .allSatisfy(each -> assertThat(each.words(Units.METRIC)).startsWith(winner + " has "));
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void a_day_that_a_coordinator_gives_to_another_meanwhile_can_be_taken_no_more() {
        give(turn(cellar, 3), tom);
        UUID swap = ask(turn(cellar, 3), null, null, tom);
        duties.write(List.of(new DutyStore.Change(turn(cellar, 3), tom, omar)), TODAY, ilse);

        Decision<Swap> came = swaps.take(swap, TODAY, priya);

        assertThat(came.refusal()).contains(new SwapRefusal.RotaChanged("Thu 4 Mar at Hall cellar"));
        assertThat(holder(turn(cellar, 3))).isEqualTo(omar);
    }

    @Test
    void only_the_one_who_is_asked_can_take_it_and_a_no_ends_it() {
        give(turn(cellar, 3), tom);
        UUID swap = ask(turn(cellar, 3), priya, null, tom);

        assertThat(no(swaps.take(swap, TODAY, omar))).contains("Only Priya is asked");
        done(swaps.decline(swap, TODAY, priya));
        assertThat(no(swaps.take(swap, TODAY, priya))).contains("declined already");
        assertThat(holder(turn(cellar, 3))).isEqualTo(tom);
    }

    @Test
    void one_who_looks_elsewhere_that_day_cannot_take_a_second_site() {
        give(turn(cellar, 3), tom);
        give(turn(bench, 3), priya);
        UUID swap = ask(turn(cellar, 3), null, null, tom);

        assertThat(no(swaps.take(swap, TODAY, priya))).contains("You look at another site on Thu 4 Mar already");
    }

    @Test
    void a_withdrawn_swap_can_be_asked_again_and_only_the_asker_withdraws() {
        give(turn(cellar, 3), tom);
        UUID swap = ask(turn(cellar, 3), null, null, tom);

        assertThat(no(swaps.ask(turn(cellar, 3), null, null, TODAY, tom))).contains("already");
        assertThat(no(swaps.withdraw(swap, priya))).contains("Only Tom, who asked");
        done(swaps.withdraw(swap, tom));
        assertThat(no(swaps.take(swap, TODAY, priya))).contains("has withdrawn");
        done(swaps.ask(turn(cellar, 3), null, null, TODAY, tom));
    }

    @Test
    void past_days_and_days_of_others_cannot_be_asked_for() {
        give(turn(cellar, -1), tom);
        give(turn(cellar, 3), priya);

        assertThat(no(swaps.ask(turn(cellar, -1), null, null, TODAY, tom))).contains("is past");
        assertThat(no(swaps.ask(turn(cellar, 3), null, null, TODAY, tom))).contains("not on duty there");
        assertThat(swaps.take(UUID.randomUUID(), TODAY, tom)).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void a_day_that_goes_by_unanswered_can_be_taken_no_more() {
        give(turn(cellar, 3), tom);
        UUID swap = ask(turn(cellar, 3), null, null, tom);

        assertThat(no(swaps.take(swap, TODAY.plusDays(4), priya))).contains("is past");
    }

    @Test
    void a_stand_in_who_takes_the_day_is_followed_by_another() {
        can(priya);
        give(turn(cellar, 3), tom);
        assertThat(standIn(turn(cellar, 3))).isEqualTo("Priya");
        can(omar);
        assertThat(standIn(turn(cellar, 3))).isEqualTo("Priya");
        UUID swap = ask(turn(cellar, 3), null, null, tom);

        swaps.take(swap, TODAY, priya);

        assertThat(standIn(turn(cellar, 3))).isEqualTo("Omar");
    }

    @Test
    void a_stand_in_who_cannot_on_that_day_is_followed_by_another() {
        can(priya);
        give(turn(cellar, 3), tom);
        can(omar);

        willing.addAway(priya, turn(cellar, 2).day(), turn(cellar, 4).day(), TODAY, priya);

        assertThat(standIn(turn(cellar, 3))).isEqualTo("Omar");
    }

    @Test
    void what_was_set_by_hand_meanwhile_is_not_overwritten_by_a_proposal() {
        can(priya);
        give(turn(cellar, 3), omar);

        DutyStore.Filled filled =
                duties.fill(Map.of(turn(cellar, 3), priya, turn(cellar, 4), priya, turn(cellar, 5), omar), TODAY, ilse);

        assertThat(filled.lines()).isEqualTo(1);
        assertThat(filled.left()).containsExactlyInAnyOrder(turn(cellar, 3), turn(cellar, 5));
        assertThat(holder(turn(cellar, 3))).isEqualTo(omar);
        assertThat(holder(turn(cellar, 4))).isEqualTo(priya);
    }

    @Test
    void a_rota_that_was_opened_before_another_change_writes_nothing() {
        give(turn(cellar, 3), tom);

        Decision<Integer> decision = duties.write(
                List.of(
                        new DutyStore.Change(turn(cellar, 3), omar, priya),
                        new DutyStore.Change(turn(cellar, 4), null, priya)),
                TODAY,
                ilse);

        assertThat(decision).isEqualTo(new Decision.Overtaken<>(new RotaOvertaken(List.of(turn(cellar, 3)))));
        assertThat(database().sql().fetchCount(DUTY)).isEqualTo(1);
    }

    private void can(UUID member) {
        Set<SiteWeekday> every = new HashSet<>();
        Arrays.stream(DayOfWeek.values()).forEach(day -> every.add(new SiteWeekday(cellar, day)));
        willing.keep(member, every, TODAY, member);
    }

    private String standIn(Turn turn) {
        Named standIn = standIns.between(TODAY, TODAY.plusDays(30)).get(turn);
        return standIn == null ? "nobody" : standIn.name();
    }

    /** Why it was not done. */
    private static String no(Decision<?> decision) {
        return decision.refusal().orElseThrow().words(Units.METRIC);
    }

    private void give(Turn turn, UUID member) {
        duties.write(List.of(new DutyStore.Change(turn, null, member)), TODAY, ilse);
    }

    private UUID ask(Turn turn, @Nullable UUID of, @Nullable Turn inReturn, UUID by) {
        return done(swaps.ask(turn, of, inReturn, TODAY, by));
    }

    private @Nullable UUID holder(Turn turn) {
        return DutyStore.holder(database().sql(), turn);
    }

    private static Turn turn(UUID site, int day) {
        return new Turn(site, TODAY.plusDays(day));
    }

    private UUID person(String name) {
        NewMember member = new NewMember(name, "US", "55804", "not a hash");
        return new MemberStore(database(), audit()).add(database().sql(), member, false, "for a test");
    }

    private UUID site(String name, int order) {
        UUID id = UUID.randomUUID();
        database()
                .sql()
                .insertInto(warmshelf.db.generated.Tables.SITE)
                .columns(warmshelf.db.generated.Tables.SITE.fields())
                .values(id, name, order, BigDecimal.valueOf(15), 120, "", 1, null)
                .execute();
        return id;
    }
}
