package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import warmshelf.timeline.Step;

/** What is written is read by ical4j, a second library, and held against RFC 5545. */
class CalendarFeedTest {
    private static final UUID SOWING = new UUID(7, 1);
    private static final UUID SITE = new UUID(7, 2);
    private static final UUID MEMBER = new UUID(7, 3);
    private static final LocalDate DAY = LocalDate.of(2027, 3, 28);
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Instant NOW = Instant.parse("2027-03-01T15:00:00Z");
    private static final String ADDRESS = "https://seeds.example.org";

    @Test
    void a_step_is_a_whole_day_whose_end_is_the_day_after() throws Exception {
        VEvent event = events(List.of(step("Pepper · Lantern Row"))).get(0);

        assertThat(value(event, Property.DTSTART)).isEqualTo("20270328");
        assertThat(value(event, Property.DTEND))
                .as("exclusive, RFC 5545 section 3.6.1")
                .isEqualTo("20270329");
        assertThat(value(event, Property.SUMMARY)).isEqualTo("Sow: Pepper · Lantern Row");
        assertThat(value(event, Property.URL)).isEqualTo(ADDRESS + "/sowings/" + SOWING);
        assertThat(value(event, Property.DTSTAMP)).isEqualTo("20270301T150000Z");
        assertThat(value(event, Property.LAST_MODIFIED))
                .as("without a METHOD the same as DTSTAMP, RFC 5545 section 3.8.7.2")
                .isEqualTo("20270301T150000Z");
        assertThat(value(event, Property.SEQUENCE)).isEqualTo("0");
    }

    @Test
    void the_same_step_keeps_its_name_whatever_address_it_is_asked_under() {
        String here = written(List.of(FeedDay.of(step("Pepper"))));
        String there = new CalendarFeed("http://192.168.1.20:7070")
                .written(
                        "Hill and Shore",
                        List.of(FeedDay.of(step("Pepper"))),
                        told(List.of(FeedDay.of(step("Pepper")))));

        assertThat(here).contains("UID:" + SOWING + "-sow\r\n");
        assertThat(there).contains("UID:" + SOWING + "-sow\r\n");
    }

    @Test
    void a_duty_is_told_with_its_site() throws Exception {
        VEvent event =
                read(List.of(FeedDay.duty(SITE, "Hall cellar", DAY, MEMBER))).get(0);

        assertThat(value(event, Property.SUMMARY)).isEqualTo("You look: Hall cellar");
        assertThat(event.getProperty(Property.DESCRIPTION)).isEmpty();
    }

    @Test
    void what_was_called_off_is_cancelled_and_nothing_else_of_it_is_told() throws Exception {
        FeedDay duty = FeedDay.duty(SITE, "Hall cellar", DAY, MEMBER);
        Map<String, ToldDay> before = Map.of(duty.uid(), told(List.of(duty)).get(0));
        List<ToldDay> after = ToldDay.all(before, List.of(), NOW.plusSeconds(60), TODAY);

        VEvent event = read(new CalendarFeed(ADDRESS).written("Hill and Shore", List.of(), after))
                .get(0);

        assertThat(value(event, Property.STATUS)).isEqualTo("CANCELLED");
        assertThat(value(event, Property.SEQUENCE)).isEqualTo("1");
        assertThat(value(event, Property.DTSTAMP)).isEqualTo("20270301T150100Z");
        assertThat(event.getProperty(Property.URL)).isEmpty();
    }

    @Test
    void it_has_no_method_for_it_is_looked_up_and_not_sent() {
        // RFC 5545, section 3.7.2; RFC 5546 speaks of what has one
        assertThat(written(List.of(FeedDay.of(step("Pepper"))))).doesNotContain("METHOD");
    }

    @Test
    void awkward_words_come_through_and_every_line_is_at_most_75_octets() throws Exception {
        String awkward = "Tomate „Königin“; süß, groß\\klein\n" + "sehr ".repeat(40) + "ü".repeat(60);
        StepAhead step = new StepAhead(SOWING, awkward, "Pepper", Step.SOW, DAY, DAY, awkward, true);

        assertThat(written(List.of(FeedDay.of(step))).split("\r\n"))
                .allSatisfy(line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length)
                        .as(line)
                        .isLessThanOrEqualTo(75));
        VEvent event = events(List.of(step)).get(0);
        assertThat(value(event, Property.DESCRIPTION)).isEqualTo(awkward);
    }

    @Test
    void a_person_with_nothing_ahead_has_a_calendar_without_events_that_is_valid_all_the_same() throws Exception {
        assertThat(read(List.of())).isEmpty();
        assertThat(written(List.of()))
                .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0")
                .doesNotContain("VEVENT");
    }

    private static StepAhead step(String title) {
        return new StepAhead(
                SOWING, title, "Pepper", Step.SOW, DAY, DAY.plusDays(6), "Eight weeks before planting out.", true);
    }

    private static List<ToldDay> told(List<FeedDay> days) {
        return ToldDay.all(Map.of(), days, NOW, TODAY);
    }

    private static String written(List<FeedDay> days) {
        return new CalendarFeed(ADDRESS).written("Hill, and Shore; Seed Starters", days, told(days));
    }

    private static List<VEvent> events(List<StepAhead> steps) throws Exception {
        return read(steps.stream().map(FeedDay::of).toList());
    }

    private static List<VEvent> read(List<FeedDay> days) throws Exception {
        return read(written(days));
    }

    private static List<VEvent> read(String written) throws Exception {
        Calendar read = new CalendarBuilder().build(new StringReader(written));
        assertThat(read.validate().hasErrors()).as(read.validate().toString()).isFalse();
        return read.getComponents(Component.VEVENT);
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).orElseThrow().getValue();
    }
}
