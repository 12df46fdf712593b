package warmshelf.reminder.push;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.group.MemberStore;
import warmshelf.group.SessionStore;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class PushStoreContract extends StoreContract {
    private final Map<String, String> sessions = new HashMap<>();
    private GrowRoom room;
    private PushAddressStore addresses;
    private PushNoticeStore notices;
    private PushWishStore wishes;
    private String toms;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        addresses = new PushAddressStore(database(), audit());
        notices = new PushNoticeStore(database(), audit());
        wishes = new PushWishStore(database(), audit());
        toms = signIn(room.tom());
    }

    @Test
    void a_device_is_told_once_of_one_thing() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));
        notices.lay(room.tom(), notice("alarm 1"));
        notices.lay(room.tom(), notice("alarm 2"));

        assertThat(notices.take())
                .extracting(ready -> ready.notice().about())
                .containsExactlyInAnyOrder("alarm 1", "alarm 2");
        assertThat(notices.knows(room.tom(), "alarm 1")).isTrue();
        assertThat(notices.knows(room.priya(), "alarm 1")).isFalse();
    }

    @Test
    void every_device_of_a_member_is_told_and_nobody_elses() {
        add("a");
        addresses.keep(room.tom(), signIn(room.tom()), target("b"), "computer");
        addresses.keep(room.priya(), signIn(room.priya()), target("c"), "Priya's");

        notices.lay(room.tom(), notice("alarm 1"));

        assertThat(notices.take())
                .extracting(ready -> ready.target().endpoint())
                .containsExactlyInAnyOrder(target("a").endpoint(), target("b").endpoint());
    }

    @Test
    void a_device_added_after_a_thing_was_told_is_not_told_it_again() {
        add("a");
        notices.lay(room.tom(), notice("morning 2027-03-01"));
        addresses.keep(room.tom(), signIn(room.tom()), target("b"), "computer");
        notices.lay(room.tom(), notice("morning 2027-03-01"));

        assertThat(notices.take()).hasSize(1);
    }

    @Test
    void two_nodes_that_think_of_one_thing_at_once_lay_one_notice() throws Exception {
        add("a");
        for (int round = 0; round < 20; round++) {
            String about = "alarm " + round;
            both(() -> {
                notices.lay(room.tom(), notice(about));
                return List.of();
            });
        }
        assertThat(database().sql().fetchCount(PUSH_NOTICE)).isEqualTo(20);
    }

    @Test
    void of_two_nodes_that_send_at_once_each_notice_is_taken_by_one() throws Exception {
        add("a");
        for (int i = 0; i < 15; i++) {
            notices.lay(room.tom(), notice("alarm " + i));
        }

        assertThat(both(() ->
                        notices.take().stream().map(PushNoticeStore.Ready::id).toList()))
                .hasSize(15)
                .doesNotHaveDuplicates();
    }

    @Test
    void a_notice_whose_node_died_is_taken_again_after_some_minutes() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));
        assertThat(notices.take()).hasSize(1);
        assertThat(notices.take()).isEmpty();

        clock.advance(Duration.ofMinutes(11));

        assertThat(notices.take())
                .singleElement()
                .satisfies(ready -> assertThat(ready.tries()).isEqualTo(2));
    }

    @Test
    void what_was_sent_is_not_taken_again_and_its_device_says_when() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));
        notices.sent(notices.take().get(0));
        clock.advance(Duration.ofMinutes(30));

        assertThat(notices.take()).isEmpty();
        assertThat(addresses.of(room.tom(), toms))
                .singleElement()
                .satisfies(device -> assertThat(device.lastToldAt()).isNotNull());
    }

    @Test
    void a_notice_waits_as_long_as_the_service_asks_and_each_time_longer() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));

        assertThat(notices.later(notices.take().get(0), Duration.ofMinutes(20))).isTrue();
        clock.advance(Duration.ofMinutes(19));
        assertThat(notices.take()).isEmpty();
        clock.advance(Duration.ofMinutes(1));
        assertThat(notices.later(notices.take().get(0), Duration.ZERO)).isTrue();
        clock.advance(Duration.ofMinutes(3));
        assertThat(notices.take()).as("the second time after four minutes").isEmpty();
        clock.advance(Duration.ofMinutes(1));
        assertThat(notices.take()).hasSize(1);
    }

    @Test
    void a_notice_is_given_up_after_a_day_or_when_it_is_stale() {
        add("a");
        notices.lay(
                room.tom(),
                new PushMessage(
                        "alarm 1", "t", "b", "/", true, "x", clock.instant().plus(Duration.ofDays(9))));
        notices.lay(room.tom(), notice("alarm 2"));
        List<PushNoticeStore.Ready> ready = notices.take();

        assertThat(ready.stream().filter(each -> notices.later(each, Duration.ofHours(7))))
                .as("seven hours are too long for what counts six")
                .extracting(each -> each.notice().about())
                .containsExactly("alarm 1");
        clock.advance(Duration.ofHours(8));
        PushNoticeStore.Ready again = notices.take().get(0);
        assertThat(notices.later(again, Duration.ofHours(17))).isFalse();
        clock.advance(Duration.ofDays(2));
        assertThat(notices.take()).isEmpty();
    }

    @Test
    void what_is_stale_when_its_turn_comes_is_not_sent() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));
        clock.advance(Duration.ofHours(6));

        assertThat(notices.take()).isEmpty();
        assertThat(database().sql().fetchCount(PUSH_NOTICE, PUSH_NOTICE.GIVEN_UP_AT.isNotNull()))
                .isEqualTo(1);
    }

    @Test
    void after_signing_out_on_a_device_not_even_what_waited_is_sent_there() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));
        new SessionStore(database(), clock).end(Objects.requireNonNull(sessions.get(toms)), room.tom());

        assertThat(notices.take()).isEmpty();
        assertThat(wishes.owners()).isEmpty();
        addresses.endOver();
        assertThat(addresses.of(room.tom(), toms)).singleElement().satisfies(device -> {
            assertThat(device.endedWhy()).isEqualTo("signed out");
            assertThat(device.endedAt()).isNotNull();
        });
        assertThat(database().sql().fetchSingle(PUSH_ADDRESS).getEndpoint())
                .as("forgotten")
                .isEmpty();
    }

    @Test
    void a_sign_in_that_ran_out_ends_its_device() {
        add("a");
        clock.advance(Duration.ofDays(31));

        addresses.endOver();

        assertThat(database().sql().fetchSingle(PUSH_ADDRESS).getEndedWhy()).isEqualTo("signed out");
    }

    @Test
    void who_leaves_is_told_nothing_any_more_and_not_again_on_coming_back() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));
        MemberStore members = new MemberStore(database(), audit());
        UUID ilse = room.priya();
        database().sql().transaction(inside -> members.leave(inside.dsl(), room.tom(), ilse));

        assertThat(notices.take()).isEmpty();
        addresses.endOver();
        members.comeBack(room.tom(), ilse);
        notices.lay(room.tom(), notice("alarm 2"));
        assertThat(notices.take()).isEmpty();
        assertThat(database().sql().fetchSingle(PUSH_ADDRESS).getEndedWhy()).isEqualTo("left");
    }

    @Test
    void a_device_that_another_member_adds_is_theirs_alone() {
        add("a");
        notices.lay(room.tom(), notice("alarm 1"));
        String priyas = signIn(room.priya());
        addresses.keep(room.priya(), priyas, target("a"), "shared phone");
        notices.lay(room.tom(), notice("alarm 2"));
        notices.lay(room.priya(), notice("alarm 1"));

        assertThat(notices.take())
                .singleElement()
                .satisfies(ready -> assertThat(ready.notice().about()).isEqualTo("alarm 1"));
        assertThat(wishes.owners()).extracting(PushWishStore.Owner::id).containsExactly(room.priya());
        assertThat(addresses.of(room.tom(), toms).get(0).endedWhy()).isEqualTo("signed out");
    }

    @Test
    void a_device_whose_address_changes_stays_one_device_and_keeps_its_name() {
        add("a");
        assertThat(addresses.move(room.tom(), toms, target("b"))).isTrue();
        notices.lay(room.tom(), notice("alarm 1"));

        assertThat(notices.take())
                .extracting(ready -> ready.target().endpoint())
                .containsExactly(target("b").endpoint());
        assertThat(addresses.of(room.tom(), toms)).singleElement().satisfies(device -> {
            assertThat(device.name()).isEqualTo("my phone");
            assertThat(device.here()).isTrue();
        });
        assertThat(addresses.move(room.priya(), signIn(room.priya()), target("c")))
                .as("of a device that was never added")
                .isFalse();
    }

    @Test
    void a_late_word_that_the_old_address_is_gone_does_not_end_the_new_one() {
        add("a");
        addresses.move(room.tom(), toms, target("b"));
        UUID device = addresses.of(room.tom(), toms).get(0).id();

        addresses.gone(device, target("a"));
        assertThat(addresses.of(room.tom(), toms).get(0).endedAt()).isNull();
        addresses.gone(device, target("b"));
        assertThat(addresses.of(room.tom(), toms).get(0).endedWhy()).isEqualTo("gone");
    }

    @Test
    void ten_devices_fit_and_a_stopped_one_makes_room() {
        List<String> tokens = new ArrayList<>();
        for (int i = 0; i < PushAddressStore.MOST_DEVICES; i++) {
            tokens.add(signIn(room.tom()));
            assertThat(addresses.keep(room.tom(), tokens.get(i), target("n" + i), "n" + i))
                    .isTrue();
        }
        assertThat(addresses.keep(room.tom(), toms, target("a"), "one more")).isFalse();
        assertThat(addresses.keep(room.tom(), tokens.get(0), target("other"), "the same device"))
                .isTrue();
        UUID first = addresses.of(room.tom(), toms).get(0).id();
        assertThat(addresses.stop(room.priya(), first)).as("not hers").isFalse();
        assertThat(addresses.stop(room.tom(), first)).isTrue();
        assertThat(addresses.stop(room.tom(), first)).as("once").isFalse();

        assertThat(addresses.keep(room.tom(), toms, target("a"), "one more")).isTrue();
    }

    @Test
    void a_wish_takes_the_place_of_the_one_before_and_without_one_everything_is_told() {
        add("a");
        assertThat(wishes.owners())
                .singleElement()
                .satisfies(owner -> assertThat(owner.wish()).isEqualTo(PushWish.EVERYTHING));
        PushWish wish = new PushWish(false, true, false, true);
        wishes.keep(room.tom(), PushWish.EVERYTHING);
        wishes.keep(room.tom(), wish);

        assertThat(wishes.of(room.tom())).isEqualTo(wish);
        assertThat(wishes.owners()).extracting(PushWishStore.Owner::wish).containsExactly(wish);
    }

    private void add(String name) {
        assertThat(addresses.keep(room.tom(), toms, target(name), "my phone")).isTrue();
    }

    /** The form token of a new sign-in. */
    private String signIn(UUID member) {
        String session = new SessionStore(database(), clock).open(member);
        String token = database()
                .sql()
                .select(MEMBER_SESSION.CSRF_TOKEN)
                .from(MEMBER_SESSION)
                .where(MEMBER_SESSION.TOKEN_HASH.eq(PushAddressStore.hash(session)))
                .fetchSingle(MEMBER_SESSION.CSRF_TOKEN);
        sessions.put(token, session);
        return token;
    }

    private static <T> List<T> both(Callable<List<T>> work) throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        List<T> all = new ArrayList<>();
        try {
            CyclicBarrier together = new CyclicBarrier(2);
            Callable<List<T>> each = () -> {
                together.await();
                return work.call();
            };
            for (Future<List<T>> done : both.invokeAll(List.of(each, each))) {
                all.addAll(done.get());
            }
        } finally {
            both.shutdownNow();
        }
        return all;
    }

    private static PushTarget target(String name) {
        return new PushTarget("https://push.example.org/" + name, "key", "secret");
    }

    private PushMessage notice(String about) {
        return new PushMessage(
                about,
                "Mat M1 is too hot",
                "Hall cellar",
                "/mats/1",
                true,
                "mat 1",
                clock.instant().plus(Duration.ofHours(6)));
    }
}
