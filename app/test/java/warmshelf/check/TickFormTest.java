package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.allocation.Slot;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;

class TickFormTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 20);
    private static final Instant NOON = Instant.parse("2027-03-20T12:00:00Z");
    private static final UUID PLACE = new UUID(6, 2);

    @Test
    void a_tick_is_read_whole() {
        UUID id = new UUID(8, 8);

        Tick tick = form(Map.of(
                        "id",
                        id.toString(),
                        "step",
                        "moved-to-cells",
                        "seenOn",
                        "2027-03-18",
                        "sprouted",
                        "7",
                        "moved",
                        "6",
                        "lost",
                        "1",
                        "finished",
                        "yes",
                        "problem",
                        "mould",
                        "note",
                        " two mouldy "))
                .tick()
                .orElseThrow();

        assertThat(tick)
                .isEqualTo(new Tick(
                        id,
                        EntryStep.MOVED_TO_CELLS,
                        LocalDate.of(2027, 3, 18),
                        7,
                        6,
                        1,
                        true,
                        Problem.MOULD,
                        "two mouldy",
                        null,
                        null,
                        false,
                        null,
                        ""));
    }

    @Test
    void a_press_without_a_day_or_a_count_is_of_today_and_counts_nothing() {
        Tick tick = form(Map.of("step", "look")).tick().orElseThrow();

        assertThat(tick.seenOn()).isEqualTo(TODAY);
        assertThat(tick.sprouted()).isNull();
        assertThat(tick.lightPlace()).isNull();
    }

    @Test
    void nothing_new_sends_the_count_as_it_was_whatever_the_count_field_says() {
        assertThat(form(Map.of("step", "look", "nothing", "3", "sprouted", "9"))
                        .tick()
                        .orElseThrow()
                        .sprouted())
                .isEqualTo(3);
    }

    @Test
    void a_bag_of_seed_moves_into_half_a_tray_under_the_light() {
        assertThat(form(Map.of("step", "moved-to-cells", "lightPlace", PLACE + "/3"))
                        .tick()
                        .orElseThrow()
                        .lightPlace())
                .isEqualTo(new Tick.LightPlace(PLACE, new Slot(3, 2)));
        assertThat(form(Map.of("step", "under-light", "lightPlace", "home"))
                        .tick()
                        .orElseThrow()
                        .lightPlace())
                .isNull();
    }

    @Test
    void sixty_days_back_are_accepted() {
        assertThat(form(Map.of("step", "look", "seenOn", "2027-01-19")).tick()).isPresent();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "seenOn | 2027-03-21 | The day it was seen was 2027-03-21, which is still to come; today is"
                        + " 2027-03-20.",
                "seenOn | 2027-01-18 | The day it was seen was 2027-01-18; at most 60 days back is accepted.",
                "seenOn | yesterday | The day it was seen was 'yesterday'; a date such as 2027-03-01 is accepted.",
                "seenOn | 2027-02-30 | The day it was seen was '2027-02-30'; a date such as 2027-03-01 is accepted.",
                "sprouted | 13 | Sprouted so far was '13'; a whole number from 0 to 12 is accepted.",
                "sprouted | -1 | Sprouted so far was '-1'; a whole number from 0 to 12 is accepted.",
                "sprouted | 1.5 | Sprouted so far was '1.5'; a whole number from 0 to 12 is accepted.",
                "moved | 13 | Moved so far was '13'; a whole number from 0 to 12 is accepted.",
                "lost | 99999999999 | Lost so far was '99999999999'; a whole number from 0 to 12 is accepted.",
                "problem | gremlins | The problem was 'gremlins'; accepted are: dry, wet, mould, damping-off, pests, virus, too-hot,"
                        + " too-cold, no-label, seed-missing, torn, other.",
                "lightPlace | somewhere | The place under the light was not one of those offered; please choose one"
                        + " from the list.",
                "lightPlace | 00000000-0000-0006-0000-000000000002/2 | The place under the light was not one of those"
                        + " offered; please choose one from the list.",
                "lightPlace | 00000000-0000-0006-0000-000000000002/ | The place under the light was not one of those"
                        + " offered; please choose one from the list.",
                "id | 17 | The entry's id is not a UUID.",
                "supersedes | 17 | The corrected entry is not a UUID."
            })
    void what_cannot_be_taken_is_named_with_what_was_given(String field, String typed, String sentence) {
        TickForm form = form(Map.of("step", "look", "note", "by the window", field, typed));

        assertThat(form.tick()).isEmpty();
        assertThat(form.reader().problems()).containsOnlyKeys(field).containsEntry(field, sentence);
        assertThat(form.reader().typed()).containsEntry(field, typed).containsEntry("note", "by the window");
    }

    @Test
    void a_step_that_does_not_exist_is_refused() {
        TickForm form = form(Map.of("step", "sung-to"));

        assertThat(form.tick()).isEmpty();
        assertThat(form.reader().problems().get("step")).startsWith("What was done was 'sung-to'; accepted are: look,");
    }

    @Test
    void a_note_longer_than_fits_is_refused_with_its_length() {
        TickForm form = form(Map.of("step", "look", "note", "x".repeat(1001)));

        assertThat(form.tick()).isEmpty();
        assertThat(form.reader().problems()).containsEntry("note", "The note has 1,001 characters; at most 1000 fit.");
    }

    @Test
    void a_form_sent_twice_from_one_page_makes_one_id_and_another_step_or_page_another() {
        UUID first = id("page-one", "look");

        assertThat(id("page-one", "look")).isEqualTo(first);
        assertThat(id("page-one", "first-feed")).isNotEqualTo(first);
        assertThat(id("page-two", "look")).isNotEqualTo(first);
        assertThat(id("", "look")).isNotEqualTo(id("", "look"));
    }

    private static UUID id(String page, String step) {
        return form(Map.of("step", step, "page", page)).tick().orElseThrow().id();
    }

    private static TickForm form(Map<String, String> fields) {
        Map<String, List<String>> typed = new HashMap<>();
        fields.forEach((field, text) -> typed.put(field, List.of(text)));
        EntryIds ids = new EntryIds(NOON, ZoneOffset.UTC, (id, since) -> false);
        return new TickForm(typed, Cases.bag().sown().sowing(), TODAY, ids);
    }
}
