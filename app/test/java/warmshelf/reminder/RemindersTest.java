package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.group.GroupStore;
import warmshelf.loop.Cellar;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** Letters as a real mail server in this process receives them (GreenMail). */
class RemindersTest {
    private static final String ADDRESS = "https://seeds.example.org";

    private final GreenMail mail = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private Cellar cellar;
    private Reminders reminders;
    private MailWishStore wishes;

    @BeforeEach
    void open() {
        mail.start();
        cellar = Cellar.open();
        var database = cellar.group().database();
        var audit = cellar.group().audit();
        wishes = new MailWishStore(database, audit);
        reminders = reminders(mail.getSmtp().getPort());
    }

    private Reminders reminders(int port) {
        var database = cellar.group().database();
        var audit = cellar.group().audit();
        SowingStores stores = SowingStores.over(database, audit, FrostSource.bundledOnly());
        MailServer server =
                new MailServer("127.0.0.1", port, null, null, "seeds@example.org", MailServer.Security.NONE);
        return ReminderRoom.reminders(
                stores,
                new GroupStore(database, audit),
                ReminderRoom.mail(stores, server),
                cellar.group().clock(),
                ADDRESS);
    }

    @AfterEach
    void close() {
        cellar.close();
        mail.stop();
    }

    @Test
    void in_the_morning_a_member_is_told_once_what_is_to_be_done() throws Exception {
        wishes.keep(tom(), new MailWish("tom@example.org", true, false, false, false));
        cellar.ask(Cellar.peppers());
        // the ideal day of sowing, nine in the morning
        cellar.group().clock().advance(Duration.ofDays(23));

        reminders.tick();
        reminders.tick();

        assertThat(letters()).hasSize(1);
        MimeMessage letter = mail.getReceivedMessages()[0];
        assertThat(letter.getSubject()).isEqualTo("Today: 2 things to do");
        assertThat(letter.getFrom()[0].toString()).isEqualTo(TestGroup.NAME + " <seeds@example.org>");
        assertThat(letter.getAllRecipients()[0].toString()).isEqualTo("tom@example.org");
        assertThat(letter.getHeader("Auto-Submitted")).containsExactly("auto-generated");
        assertThat(letters().get(0))
                .contains(
                        "Hello Tom",
                        "Pepper, sweet and mild hot · Lantern Row: Soak the seed.",
                        "Pepper, sweet and mild hot · Lantern Row: Sow.",
                        ADDRESS + "/sowings/")
                .contains("or stop it: " + ADDRESS + "/reminders");
    }

    @Test
    void in_the_morning_a_grower_is_told_of_a_problem_and_what_to_do_until_it_is_answered() throws Exception {
        wishes.keep(tom(), new MailWish("tom@example.org", true, false, false, false));
        String sowing = cellar.ask(Cellar.peppers());
        cellar.group()
                .signedIn(cellar.group().onDuty())
                .post(
                        "/sowings/" + sowing + "/entries",
                        Map.of("step", "look", "problem", "torn", "note", "at a corner"));

        reminders.tick();

        assertThat(mail.getReceivedMessages()[0].getSubject()).isEqualTo("Today: a problem was noted");
        assertThat(letters().get(0))
                .contains(
                        "Lantern Row: bag or packet torn, noted by Priya on Mon 1 Mar: at a corner",
                        "Put it into a sound one with its label",
                        "To answer it: " + ADDRESS + "/sowings/" + sowing);

        cellar.group().clock().advance(Duration.ofDays(1));
        reminders.tick();
        assertThat(letters()).as("not answered yet").hasSize(2);
        String answers = Cellar.first(cellar.member().get("/today").body(), "action=\"(/sowings/[^\"]*/answers)\"");
        cellar.member().post(answers, Map.of("answer", "seen"));
        cellar.group().clock().advance(Duration.ofDays(1));
        reminders.tick();
        assertThat(letters()).hasSize(2);
    }

    @Test
    void in_the_morning_a_member_is_told_once_what_is_new_and_not_seen_yet() throws Exception {
        wishes.keep(tom(), new MailWish("tom@example.org", true, false, false, false));
        String first = cellar.ask(Cellar.peppers());
        String second = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(first);
        cellar.placeAsSuggested(second);
        cellar.member().get("/sowings/" + first);

        reminders.tick();
        cellar.group().clock().advance(Duration.ofDays(2));
        reminders.tick();

        assertThat(mail.getReceivedMessages()[0].getSubject()).isEqualTo("Today: 1 thing is new");
        assertThat(letters()).singleElement().asString().contains("* Placed: Pepper", ADDRESS + "/sowings/" + second);
        assertThat(letters().get(0)).doesNotContain(first);
    }

    @Test
    void in_the_evening_a_member_is_told_of_tomorrows_duty() throws Exception {
        wishes.keep(tom(), new MailWish("tom@example.org", false, true, false, false));
        onDuty(TestGroup.TODAY.plusDays(1).toString());

        reminders.tick();
        assertThat(letters()).as("nine in the morning is no evening").isEmpty();
        cellar.group().clock().advance(Duration.ofHours(9));
        reminders.tick();

        assertThat(mail.getReceivedMessages()[0].getSubject()).isEqualTo("Tomorrow: you look at Hall cellar");
        assertThat(letters().get(0)).contains("You look at Hall cellar. The round: " + ADDRESS + "/today?show=all");
    }

    /**
     * In the United States clocks go forward on the second Sunday of March at two and back on the first Sunday of November (15
     * U.S.C. 260a): on 14 March and 7 November 2027.
     */
    @ParameterizedTest
    @ValueSource(strings = {"2027-03-14", "2027-11-07"})
    void each_letter_comes_once_and_at_its_hour_when_the_clocks_change(LocalDate change) {
        wishes.keep(tom(), new MailWish("tom@example.org", true, true, false, false));
        ZoneId zone = ZoneId.of("America/Chicago");
        ZonedDateTime begin = change.minusDays(1).atTime(12, 0).atZone(zone);
        cellar.group().clock().advance(Duration.between(cellar.group().clock().instant(), begin.toInstant()));

        for (int day = -1; day <= 2; day++) {
            onDuty(change.plusDays(day).toString());
        }

        List<String> came = new ArrayList<>();
        while (cellar.group().clock().instant().isBefore(begin.plusDays(2).toInstant())) {
            int before = mail.getReceivedMessages().length;
            reminders.tick();
            if (mail.getReceivedMessages().length > before) {
                came.add(cellar.group().clock().instant().atZone(zone).toLocalDateTime() + ", "
                        + (mail.getReceivedMessages().length - before));
            }
            cellar.group().clock().advance(Duration.ofMinutes(15));
        }

        assertThat(came)
                .containsExactly(
                        change.minusDays(1) + "T18:00, 1",
                        change + "T07:00, 1",
                        change + "T18:00, 1",
                        change.plusDays(1) + "T07:00, 1");
    }

    @Test
    void with_nothing_to_say_nobody_is_written_to() {
        wishes.keep(tom(), new MailWish("tom@example.org", true, true, true, false));

        reminders.tick();
        cellar.group().clock().advance(Duration.ofHours(10));
        reminders.tick();

        assertThat(mail.getReceivedMessages()).isEmpty();
    }

    @Test
    void a_hot_mat_is_told_at_once_to_the_coordinator_and_to_whoever_lies_there_and_once() throws Exception {
        wishes.keep(tom(), new MailWish("tom@example.org", false, false, true, false));
        wishes.keep(cellar.group().coordinator().id(), new MailWish("ilse@example.org", false, false, true, false));
        wishes.keep(cellar.group().onDuty().id(), new MailWish("other@example.org", false, false, true, false));
        cellar.placeAsSuggested(cellar.ask(Cellar.peppers()));
        cellar.group().clock().advance(Duration.ofDays(23));
        UUID mat = cellar.group()
                .database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M1"))
                .fetchSingle(MAT.ID);
        cellar.coordinator().post("/mats/" + mat + "/readings", Map.of("celsius", "95"));

        reminders.tick();
        reminders.tick();

        assertThat(Arrays.stream(mail.getReceivedMessages()).map(RemindersTest::recipient))
                .containsExactlyInAnyOrder("tom@example.org", "ilse@example.org");
        assertThat(mail.getReceivedMessages()[0].getSubject()).isEqualTo("Mat M1 is too hot");
        assertThat(letters().get(0)).contains("at 95 °F", "Dry hands, and unplug it");
    }

    @Test
    void while_the_mail_server_is_away_letters_wait_and_nothing_is_lost() {
        wishes.keep(tom(), new MailWish("tom@example.org", false, true, false, false));
        onDuty(TestGroup.TODAY.plusDays(1).toString());
        cellar.group().clock().advance(Duration.ofHours(9));
        int port = mail.getSmtp().getPort();
        mail.stop();
        reminders.tick();

        GreenMail back = new GreenMail(new ServerSetup(port, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        back.start();
        try {
            reminders.tick();
            assertThat(back.getReceivedMessages()).as("not before its time").isEmpty();
            cellar.group().clock().advance(Duration.ofMinutes(2));
            reminders.tick();
            assertThat(back.getReceivedMessages()).hasSize(1);
        } finally {
            back.stop();
        }
    }

    private void onDuty(String day) {
        // a sign-in of its own: the days lie months apart
        Browser coordinator = cellar.group().signedIn(cellar.group().coordinator());
        String field = Cellar.first(coordinator.get("/duty").body(), "name=\"(duty/[0-9a-f-]{36}/" + day + ")\"");
        assertThat(coordinator.post("/duty", Map.of(field, tom().toString())).status())
                .isEqualTo(303);
    }

    private UUID tom() {
        return cellar.group().member().id();
    }

    private static String recipient(MimeMessage letter) {
        try {
            return letter.getAllRecipients()[0].toString();
        } catch (jakarta.mail.MessagingException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private List<String> letters() throws Exception {
        List<String> letters = new java.util.ArrayList<>();
        for (MimeMessage letter : mail.getReceivedMessages()) {
            letters.add(String.valueOf(letter.getContent()).replace("\r\n", "\n"));
        }
        return letters;
    }
}
