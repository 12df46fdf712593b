package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.group.GroupStore;
import warmshelf.group.SessionStore;
import warmshelf.loop.Cellar;
import warmshelf.reminder.push.PushAddressStore;
import warmshelf.reminder.push.PushKeys;
import warmshelf.reminder.push.PushReader;
import warmshelf.reminder.push.PushService;
import warmshelf.reminder.push.PushTarget;
import warmshelf.reminder.push.PushWish;
import warmshelf.reminder.push.PushWishStore;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.TestGroup;

/** Notices as a device reads them after they went through a push service in this process. */
class PushRemindersTest {
    private static final PushKeys.Texts TEXTS = PushKeys.fresh();
    private static final ZoneId DULUTH = ZoneId.of("America/Chicago");

    private final PushService service = PushService.open();
    private final PushReader device = PushReader.fresh();
    private Cellar cellar;
    private Reminders reminders;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        reminders = node();
    }

    @AfterEach
    void close() {
        cellar.close();
        service.close();
    }

    private Reminders node() {
        var database = cellar.group().database();
        var audit = cellar.group().audit();
        var clock = cellar.group().clock();
        SowingStores stores = SowingStores.over(database, audit, FrostSource.bundledOnly());
        PushKeys keys = PushKeys.of(TEXTS.publicKey(), TEXTS.privateKey(), "mailto:seeds@example.org")
                .orElseThrow();
        Channel push = ReminderRoom.push(stores, keys, service.rule(), clock);
        return ReminderRoom.reminders(
                stores, new GroupStore(database, audit), push, clock, "https://seeds.example.org");
    }

    @Test
    void in_the_morning_a_phone_shows_once_what_is_to_be_done_by_crop_alone_whatever_node_sends_it() {
        cellar.ask(Cellar.peppers());
        // the ideal day of sowing, ten in the morning, as summer time has begun
        cellar.group().clock().advance(Duration.ofDays(23));
        add(tom(), "toms");
        Reminders other = node();

        reminders.lay();
        other.lay();
        other.send();
        reminders.send();
        reminders.tick();

        assertThat(service.received()).hasSize(1);
        assertThat(shown())
                .contains(
                        "\"title\":\"Today: 2 things to do\"",
                        "\"body\":\"Pepper, sweet and mild hot: Soak the seed. Pepper, sweet and mild hot: Sow.\"",
                        "\"path\":\"/today?show=mine\"")
                .doesNotContain("Lantern", "Tom");
        // until six in the evening, eight hours on: a phone that was off is told nothing stale
        assertThat(service.received().get(0).header("TTL")).isEqualTo("28800");
        assertThat(service.received().get(0).header("Urgency")).isEqualTo("normal");
    }

    @Test
    void in_the_morning_a_phone_tells_the_grower_of_a_problem_without_anybodys_name() {
        add(tom(), "toms");
        String sowing = cellar.ask(Cellar.peppers());
        cellar.group()
                .signedIn(cellar.group().onDuty())
                .post("/sowings/" + sowing + "/entries", Map.of("step", "look", "problem", "seed-missing"));

        reminders.tick();

        assertThat(shown())
                .contains(
                        "\"title\":\"Today: a problem was noted\"",
                        "\"body\":\"Pepper, sweet and mild hot: seed missing.\"",
                        "\"path\":\"/today?show=mine\"")
                .doesNotContain("Priya", "Lantern");
    }

    @Test
    void in_the_evening_a_phone_shows_tomorrows_duty_until_midnight() {
        add(tom(), "toms");
        onDuty(TestGroup.TODAY.plusDays(1));
        cellar.group().clock().advance(Duration.ofHours(9));

        reminders.tick();

        assertThat(shown()).contains("\"title\":\"Tomorrow: you look at Hall cellar\"", "\"path\":\"/duty\"");
        assertThat(service.received().get(0).header("TTL")).isEqualTo("21600");
    }

    @Test
    void a_hot_mat_is_shown_at_once_without_anybodys_name() {
        assertThat(cellar.placeAsSuggested(cellar.ask(Cellar.peppers())).status())
                .isEqualTo(303);
        cellar.group().clock().advance(Duration.ofDays(23));
        add(cellar.group().coordinator().id(), "ilses");
        String mat = cellar.group()
                .database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M1"))
                .fetchSingle(MAT.ID)
                .toString();
        cellar.coordinator().post("/mats/" + mat + "/readings", Map.of("celsius", "95"));

        reminders.tick();
        reminders.tick();

        assertThat(service.received()).hasSize(1);
        assertThat(shown())
                .contains(
                        "\"title\":\"Mat M1 is too hot\"",
                        "\"body\":\"Hall cellar · North rack · shelf 1\"",
                        "\"path\":\"/mats/" + mat + "\"")
                .doesNotContain("Ilse");
        assertThat(service.received().get(0).header("Urgency")).isEqualTo("high");
    }

    @Test
    void a_stand_in_is_called_after_the_hour_and_once() {
        UUID priya = cellar.group().onDuty().id();
        add(priya, "priyas");
        String site = Cellar.first(cellar.coordinator().get("/duty").body(), "name=\"duty/([0-9a-f-]{36})/");
        assertThat(cellar.placeAsSuggested(cellar.ask(Cellar.peppers())).status())
                .isEqualTo(303);
        // sowing day
        LocalDate day = TestGroup.TODAY.plusDays(23);
        cellar.group()
                .signedIn(cellar.group().onDuty())
                .post(
                        "/duty/mine",
                        Map.of("can", site + "/" + day.getDayOfWeek().getValue()));
        onDuty(day);
        at(day, 17);
        reminders.tick();
        assertThat(titles()).noneMatch(title -> title.contains("stand in"));

        at(day, 18);
        reminders.tick();
        reminders.tick();

        List<String> calls =
                titles().stream().filter(title -> title.contains("stand in")).toList();
        assertThat(calls).hasSize(1);
        assertThat(calls.get(0))
                .contains("You stand in today at Hall cellar", "The round was not done by 18:00.", "/today?show=all")
                .doesNotContain("Tom");
    }

    @Test
    void a_device_that_the_service_says_is_gone_is_told_nothing_more() {
        add(tom(), "toms");
        onDuty(TestGroup.TODAY.plusDays(1));
        cellar.group().clock().advance(Duration.ofHours(9));
        service.answer(410, "");

        reminders.tick();
        cellar.group().clock().advance(Duration.ofDays(1));
        reminders.tick();

        assertThat(service.received()).hasSize(1);
        assertThat(cellar.group().database().sql().fetchSingle(PUSH_ADDRESS).getEndedWhy())
                .isEqualTo("gone");
    }

    @Test
    void a_busy_service_is_asked_again_when_it_said_and_nothing_is_lost() {
        add(tom(), "toms");
        onDuty(TestGroup.TODAY.plusDays(1));
        cellar.group().clock().advance(Duration.ofHours(9));
        service.answer(503, "600");
        reminders.tick();
        service.answer(201, "");

        cellar.group().clock().advance(Duration.ofMinutes(9));
        reminders.tick();
        assertThat(service.received()).as("not before its time").hasSize(1);
        cellar.group().clock().advance(Duration.ofMinutes(1));
        reminders.tick();
        reminders.tick();

        assertThat(service.received()).hasSize(2);
        assertThat(service.received().get(1).header("TTL"))
                .as("shorter by then")
                .isEqualTo("21000");
    }

    @Test
    void what_is_too_large_is_given_up_and_the_device_stays() {
        add(tom(), "toms");
        onDuty(TestGroup.TODAY.plusDays(1));
        cellar.group().clock().advance(Duration.ofHours(9));
        service.answer(413, "");

        reminders.tick();
        cellar.group().clock().advance(Duration.ofHours(1));
        reminders.tick();

        assertThat(service.received()).hasSize(1);
        assertThat(cellar.group().database().sql().fetchSingle(PUSH_ADDRESS).getEndedAt())
                .isNull();
    }

    @Test
    void who_wants_nothing_in_the_evening_is_told_nothing_then() {
        add(tom(), "toms");
        onDuty(TestGroup.TODAY.plusDays(1));
        new PushWishStore(cellar.group().database(), cellar.group().audit())
                .keep(tom(), new PushWish(true, false, true, true));
        cellar.group().clock().advance(Duration.ofHours(9));

        reminders.tick();

        assertThat(service.received()).isEmpty();
    }

    private void at(LocalDate day, int hour) {
        cellar.group().clock().set(day.atTime(hour, 0).atZone(DULUTH).toInstant());
    }

    private String shown() {
        return device.read(service.received().get(0).body());
    }

    private List<String> titles() {
        return service.received().stream()
                .map(received -> device.read(received.body()))
                .toList();
    }

    /** A device of somebody's, signed in at this moment. */
    private void add(UUID member, String name) {
        var group = cellar.group();
        new SessionStore(group.database(), group.clock()).open(member);
        String formToken = group
                .database()
                .sql()
                .selectFrom(MEMBER_SESSION)
                .where(MEMBER_SESSION.MEMBER_ID.eq(member))
                .fetch(MEMBER_SESSION.CSRF_TOKEN)
                .stream()
                .max(Comparator.naturalOrder())
                .orElseThrow();
        PushTarget target = new PushTarget(service.address("/" + name), device.p256dh(), device.auth());
        assertThat(new PushAddressStore(group.database(), group.audit()).keep(member, formToken, target, name))
                .isTrue();
    }

    private void onDuty(LocalDate day) {
        String page = cellar.coordinator().get("/duty").body();
        String site = Cellar.first(page, "name=\"duty/([0-9a-f-]{36})/");
        assertThat(cellar.coordinator()
                        .post("/duty", Map.of("duty/" + site + "/" + day, tom().toString()))
                        .status())
                .isEqualTo(303);
    }

    private UUID tom() {
        return cellar.group().member().id();
    }
}
