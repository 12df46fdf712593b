package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.testing.Decided.done;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.testing.StoreContract;
import warmshelf.words.Units;

abstract class MemberStoreContract extends StoreContract {
    private MemberStore members;
    private UUID ilse;

    @BeforeEach
    void moveIn() {
        members = new MemberStore(database(), audit());
        ilse = add("Ilse Brandt", true);
        new GroupStore(database(), audit())
                .open(
                        database().sql(),
                        new GroupProfile("Hillside", ZoneId.of("America/Chicago"), Units.METRIC, "US", "55811", 2027),
                        ilse);
    }

    @Test
    void a_member_is_found_by_name_in_any_capitals_and_spaces() {
        UUID tom = add("Tom Okafor", false);

        assertThat(members.named("  TOM   okafor ").orElseThrow().id()).isEqualTo(tom);
        assertThat(members.named("Tom")).isEmpty();
    }

    @Test
    void two_people_cannot_differ_by_capitals_alone() {
        assertThatThrownBy(() -> add("ILSE BRANDT", false)).isInstanceOf(Declined.class);
    }

    @Test
    void those_present_come_before_those_who_have_left_each_by_name() {
        add("Zoe Hall", false);
        UUID anna = add("Anna Lund", false);
        leave(anna);

        assertThat(members.all()).extracting(Member::name).containsExactly("Ilse Brandt", "Zoe Hall", "Anna Lund");
        assertThat(members.named("Anna Lund")).isEmpty();
    }

    @Test
    void the_last_coordinator_stays_one() {
        assertThat(members.setCoordinator(ilse, false, ilse).refusal())
                .contains(new GroupRefusal.OnlyCoordinator("Ilse Brandt"));
        assertThatThrownBy(() -> members.keepACoordinator(database().sql(), ilse))
                .isInstanceOf(Declined.class);
        assertThat(members.find(ilse).orElseThrow().coordinator()).isTrue();
    }

    @Test
    void two_coordinators_stepping_back_at_the_same_moment_leave_one() throws Exception {
        for (int round = 0; round < 10; round++) {
            UUID other = add("Other " + round, true);
            ExecutorService both = Executors.newFixedThreadPool(2);

            List<Future<Decision<UUID>>> done = both.invokeAll(List.<Callable<Decision<UUID>>>of(
                    () -> members.setCoordinator(ilse, false, ilse),
                    () -> members.setCoordinator(other, false, other)));
            both.shutdown();

            assertThat(done)
                    .extracting(Future::get)
                    .extracting(Decision.Done.class::isInstance)
                    .containsExactlyInAnyOrder(true, false);
            members.setCoordinator(ilse, true, ilse);
            members.setCoordinator(other, false, ilse);
        }
    }

    @Test
    void a_change_based_on_an_older_version_is_not_written() {
        OwnSettings first = new OwnSettings("Ilse B.", "US", "55804", "C", null);
        OwnSettings second = new OwnSettings("Ilse Brand", "US", "55805", null, "cm");

        done(members.change(ilse, 1, first));
        assertThat(members.change(ilse, 1, second).refusal()).contains(new GroupRefusal.SettingsChanged());
        Member stored = members.find(ilse).orElseThrow();
        assertThat(stored.name()).isEqualTo("Ilse B.");
        assertThat(stored.temperatureUnit()).isEqualTo("C");
        assertThat(stored.lengthUnit()).isNull();
        assertThat(stored.version()).isEqualTo(2);
    }

    @Test
    void a_taken_name_is_told_apart_from_a_lost_race() {
        add("Tom Okafor", false);

        assertThat(members.change(ilse, 1, new OwnSettings("tom okafor", "US", "55804", null, null))
                        .refusal())
                .contains(new GroupRefusal.NameTaken("tom okafor"));
    }

    @Test
    void every_change_leaves_a_line() {
        UUID tom = add("Tom Okafor", false);
        members.setCoordinator(tom, true, ilse);
        leave(tom);
        members.comeBack(tom, ilse);

        assertThat(database()
                        .sql()
                        .fetch("select action from audit_line where subject_id = ?", tom.toString())
                        .getValues(0, String.class))
                .containsExactlyInAnyOrder("join", "make coordinator", "leave", "come back");
    }

    @Test
    void what_people_are_called_follows_who_comes_goes_returns_and_is_renamed() {
        UUID anand = add("Dev Anand", false);
        assertThat(called(anand)).isEqualTo("Dev");

        UUID malik = add("Dev Malik", false);
        assertThat(List.of(called(anand), called(malik))).containsExactly("Dev A.", "Dev M.");

        leave(malik);
        assertThat(List.of(called(anand), called(malik))).containsExactly("Dev", "Dev M.");

        members.comeBack(malik, ilse);
        assertThat(called(anand)).isEqualTo("Dev A.");

        done(members.change(malik, version(malik), new OwnSettings("David Malik", "US", "55804", null, null)));
        assertThat(List.of(called(anand), called(malik))).containsExactly("Dev", "David");
    }

    @Test
    void whoever_changes_leaves_everybody_called_as_if_all_were_named_anew() {
        List<UUID> people = new ArrayList<>();
        for (String last : List.of("", " Anand", " Malik", " 100%", " Malikson", " van Dyk")) {
            people.add(add("Dev" + last, false));
            people.add(add("Devi" + last, false));
            assertCalledAsAnew();
        }
        leave(people.get(0));
        assertCalledAsAnew();
        leave(people.get(2));
        assertCalledAsAnew();
        done(members.change(people.get(4), 1, new OwnSettings("Devi Osei", "US", "55804", null, null)));
        assertCalledAsAnew();
        members.comeBack(people.get(0), ilse);
        assertCalledAsAnew();
    }

    private void assertCalledAsAnew() {
        List<Member> all = members.all();
        Map<UUID, String> anew = CalledNames.of(all.stream()
                .map(each -> new CalledNames.Named(each.id(), each.name(), each.present(), each.erased()))
                .toList());
        assertThat(all).allSatisfy(each -> assertThat(each.called()).isEqualTo(anew.get(each.id())));
    }

    /** As after a change of the tables, which knows first words only. */
    @Test
    void those_whom_the_tables_call_alike_are_told_apart_at_the_next_start() {
        UUID anand = add("Dev Anand", false);
        UUID malik = add("Dev Malik", false);
        database().sql().update(MEMBER).set(MEMBER.CALLED, "Dev").execute();

        database().sql().transaction(inside -> CalledStore.renew(inside.dsl()));

        assertThat(List.of(called(ilse), called(anand), called(malik))).containsExactly("Ilse", "Dev A.", "Dev M.");
    }

    @Test
    void two_of_one_first_name_who_join_at_the_same_moment_are_told_apart() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        for (int round = 0; round < 10; round++) {
            String first = "Dev" + round;
            List<Future<UUID>> joined = both.invokeAll(
                    List.<Callable<UUID>>of(() -> joins(first + " Anand"), () -> joins(first + " Malik")));

            assertThat(called(joined.get(0).get())).isEqualTo(first + " A.");
            assertThat(called(joined.get(1).get())).isEqualTo(first + " M.");
        }
        both.shutdown();
    }

    private UUID joins(String name) {
        NewMember person = new NewMember(name, "US", "55803", "hash");
        return database().sql().transactionResult(inside -> members.add(inside.dsl(), person, false, "for a test"));
    }

    @Test
    void names_that_were_changed_are_known_until_another_has_them() {
        UUID tom = add("Tom Okafor", false);
        done(members.change(tom, 1, new OwnSettings("Thomas Okafor", "US", "55804", null, null)));
        done(members.change(tom, 2, new OwnSettings("Thomas, called Tom", "US", "55804", null, null)));

        assertThat(earlier(tom)).containsExactlyInAnyOrder("Tom Okafor", "Thomas Okafor");

        add("Tom Okafor", false);
        assertThat(earlier(tom)).containsExactly("Thomas Okafor");
    }

    private Set<String> earlier(UUID member) {
        return MemberStore.earlierNames(database().sql(), members.find(member).orElseThrow());
    }

    private String called(UUID member) {
        return members.find(member).orElseThrow().called();
    }

    private int version(UUID member) {
        return members.find(member).orElseThrow().version();
    }

    private void leave(UUID member) {
        database().sql().transaction(inside -> members.leave(inside.dsl(), member, ilse));
    }

    private UUID add(String name, boolean coordinator) {
        NewMember person = new NewMember(name, "US", "55803", "hash");
        return database()
                .sql()
                .transactionResult(inside -> members.add(inside.dsl(), person, coordinator, "for a test"));
    }
}
