package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
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
    private static final LocalDate DAY = LocalDate.of(2027, 3, 28);
    private static final String ADDRESS = "https://seeds.example.org";

    @Test
    void a_step_is_a_whole_day_whose_end_is_the_day_after() throws Exception {
        VEvent event = events(List.of(step("Pepper · Lantern Row")), List.of()).get(0);

        assertThat(value(event, Property.DTSTART)).isEqualTo("20270328");
        assertThat(value(event, Property.DTEND))
                .as("exclusive, RFC 5545 section 3.6.1")
                .isEqualTo("20270329");
        assertThat(value(event, Property.SUMMARY)).isEqualTo("Sow: Pepper · Lantern Row");
        assertThat(value(event, Property.URL)).isEqualTo(ADDRESS + "/sowings/" + SOWING);
        assertThat(value(event, Property.DTSTAMP)).isEqualTo("20270301T150000Z");
    }

    @Test
    void the_same_step_keeps_its_name_when_its_day_moves() throws Exception {
        VEvent before = events(List.of(step("Pepper")), List.of()).get(0);
        StepAhead later =
                new StepAhead(SOWING, "Pepper", "Pepper", Step.SOW, DAY.plusDays(3), DAY.plusDays(9), "Later.", true);
        VEvent after = events(List.of(later), List.of()).get(0);

        assertThat(value(after, Property.UID)).isEqualTo(value(before, Property.UID));
        assertThat(value(after, Property.DTSTART)).isEqualTo("20270331");
    }

    @Test
    void a_duty_is_told_with_its_site() throws Exception {
        VEvent event = events(List.of(), List.of(new CalendarFeed.Duty("s1", "Hall cellar", DAY)))
                .get(0);

        assertThat(value(event, Property.SUMMARY)).isEqualTo("You look: Hall cellar");
    }

    @Test
    void awkward_words_come_through_and_every_line_is_at_most_75_octets() throws Exception {
        String awkward = "Tomate „Königin“; süß, groß\\klein\n" + "sehr ".repeat(40) + "ü".repeat(60);
        StepAhead step = new StepAhead(SOWING, awkward, "Pepper", Step.SOW, DAY, DAY, awkward, true);
        String written = feed().written("Hill, and Shore; Seed Starters", List.of(step), List.of());

        assertThat(written.split("\r\n"))
                .allSatisfy(line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length)
                        .as(line)
                        .isLessThanOrEqualTo(75));
        VEvent event = events(List.of(step), List.of()).get(0);
        assertThat(value(event, Property.DESCRIPTION)).isEqualTo(awkward);
    }

    @Test
    void a_person_with_nothing_ahead_has_an_empty_calendar() throws Exception {
        assertThat(feed().written("Hill and Shore", List.of(), List.of()))
                .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0")
                .doesNotContain("VEVENT");
    }

    private static StepAhead step(String title) {
        return new StepAhead(
                SOWING, title, "Pepper", Step.SOW, DAY, DAY.plusDays(6), "Eight weeks before planting out.", true);
    }

    private static CalendarFeed feed() {
        return new CalendarFeed(ADDRESS, Instant.parse("2027-03-01T15:00:00Z"));
    }

    private static List<VEvent> events(List<StepAhead> steps, List<CalendarFeed.Duty> duties) throws Exception {
        Calendar read = new CalendarBuilder().build(new StringReader(feed().written("Hill and Shore", steps, duties)));
        assertThat(read.validate().hasErrors()).as(read.validate().toString()).isFalse();
        return read.getComponents(Component.VEVENT);
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).orElseThrow().getValue();
    }
}
