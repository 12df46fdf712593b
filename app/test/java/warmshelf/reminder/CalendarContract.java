package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.CALENDAR_EVENT;
import static warmshelf.db.generated.Tables.SITE;

import java.io.StringReader;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/** What programs see of a calendar as its days change, on every database; read by ical4j, a second library. */
abstract class CalendarContract {
    private Cellar cellar;
    private UUID tom;

    protected abstract TestDatabase database();

    @BeforeEach
    void open() {
        cellar = Cellar.in(TestGroup.open(database()));
        tom = cellar.group().member().id();
    }

    @AfterEach
    void close() {
        // null where the database is missing and the test is skipped
        if (cellar != null) {
            cellar.close();
        }
    }

    @Test
    void an_address_of_who_left_never_works_again_and_who_returns_makes_a_new_one() throws Exception {
        String all = address("/reminders/calendar");
        String duty = address("/reminders/duty-calendar");
        duty("2027-03-05", tom.toString());
        events(all);

        String turn = "turn/" + cellar.group().database().sql().fetchValue(SITE.ID) + "/2027-03-05";
        assertThat(cellar.coordinator()
                        .post("/people/" + tom + "/leaving", Map.of(turn, "emptied"))
                        .status())
                .isEqualTo(303);
        cellar.coordinator().post("/people/" + tom + "/return");

        assertThat(cellar.group().stranger().get(all).status()).isEqualTo(404);
        assertThat(cellar.group().stranger().get(duty).status()).isEqualTo(404);
        assertThat(events(again("/reminders/duty-calendar"))).isEmpty();
    }

    @Test
    void a_calendar_of_duty_tells_of_no_sowing_and_ends_by_itself() throws Exception {
        cellar.ask(Cellar.peppers());
        duty("2027-03-05", tom.toString());
        String all = address("/reminders/calendar");
        String duty = address("/reminders/duty-calendar");

        assertThat(events(duty)).extracting(CalendarContract::summary).containsExactly("You look: Hall cellar");
        assertThat(events(all))
                .extracting(CalendarContract::summary)
                .contains("You look: Hall cellar", "Sow: Pepper, sweet and mild hot · Lantern Row");

        cellar.member().post("/reminders/duty-calendar/removal");

        assertThat(cellar.group().stranger().get(duty).status()).isEqualTo(404);
        assertThat(cellar.group().stranger().get(all).status()).isEqualTo(200);
    }

    @Test
    void a_turn_that_is_given_away_is_cancelled_and_one_taken_back_is_on_again() throws Exception {
        duty("2027-03-05", tom.toString());
        String duty = address("/reminders/duty-calendar");
        assertThat(sequence(events(duty).get(0))).isZero();

        duty("2027-03-05", "");
        later();
        VEvent off = events(duty).get(0);
        assertThat(off.getProperty(Property.STATUS).orElseThrow().getValue()).isEqualTo("CANCELLED");
        assertThat(sequence(off)).isEqualTo(1);

        duty("2027-03-05", tom.toString());
        later();
        VEvent on = events(duty).get(0);
        assertThat(on.getProperty(Property.STATUS).orElseThrow().getValue()).isEqualTo("CONFIRMED");
        assertThat(sequence(on)).isEqualTo(2);
        assertThat(on.getProperty(Property.UID)).isEqualTo(off.getProperty(Property.UID));
    }

    @Test
    void a_sowing_that_is_begun_moves_its_later_steps_under_the_same_names_with_higher_numbers() throws Exception {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        String all = address("/reminders/calendar");
        VEvent before = named(events(all), sowing + "-first-feed");

        later();
        cellar.tick(sowing, Map.of("id", UUID.randomUUID().toString(), "step", "sown"));
        VEvent after = named(events(all), sowing + "-first-feed");

        assertThat(after.getProperty(Property.DTSTART)).isNotEqualTo(before.getProperty(Property.DTSTART));
        assertThat(sequence(after)).isEqualTo(sequence(before) + 1);
        assertThat(after.getProperty(Property.LAST_MODIFIED)).isNotEqualTo(before.getProperty(Property.LAST_MODIFIED));
    }

    @Test
    void looking_again_writes_nothing_where_nothing_changed() throws Exception {
        cellar.ask(Cellar.peppers());
        String all = address("/reminders/calendar");
        String first = cellar.group().stranger().get(all).body();
        long writes = cellar.group().database().writes();

        assertThat(cellar.group().stranger().get(all).body()).isEqualTo(first);
        assertThat(cellar.group().database().writes()).isEqualTo(writes);
        assertThat(cellar.group().database().sql().fetchCount(CALENDAR_EVENT)).isPositive();
    }

    private void later() {
        cellar.group().clock().advance(Duration.ofMinutes(20));
    }

    private void duty(String day, String member) {
        UUID site = cellar.group().database().sql().fetchValue(SITE.ID);
        assertThat(cellar.coordinator()
                        .post("/duty", Map.of("duty/" + site + "/" + day, member))
                        .status())
                .isEqualTo(303);
    }

    private String address(String where) {
        return made(cellar.member().post(where));
    }

    private String again(String where) {
        return made(cellar.group().signedIn(cellar.group().member()).post(where));
    }

    private static String made(Answer made) {
        assertThat(made.status()).isEqualTo(200);
        return Cellar.first(made.body(), "href=\"[^\"]*(/calendar/[A-Za-z0-9_-]{43}\\.ics)\"");
    }

    private List<VEvent> events(String address) throws Exception {
        Calendar read = new CalendarBuilder()
                .build(new StringReader(cellar.group().stranger().get(address).body()));
        assertThat(read.validate().hasErrors()).as(read.validate().toString()).isFalse();
        return read.getComponents(Component.VEVENT);
    }

    private static VEvent named(List<VEvent> events, String uid) {
        return events.stream()
                .filter(event ->
                        event.getProperty(Property.UID).orElseThrow().getValue().equals(uid))
                .findFirst()
                .orElseThrow();
    }

    private static String summary(VEvent event) {
        return event.getProperty(Property.SUMMARY).orElseThrow().getValue();
    }

    private static int sequence(VEvent event) {
        return Integer.parseInt(
                event.getProperty(Property.SEQUENCE).orElseThrow().getValue());
    }
}
