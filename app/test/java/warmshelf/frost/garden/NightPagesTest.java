package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** On 1 March 2027, for people who read Fahrenheit. */
class NightPagesTest {
    private static final GardenPoint PLACE = new GardenPoint(46.84, -92.22, 428);

    private TestGroup group;
    private ThermometerStore thermometers;
    private NightStore nights;
    private Browser tom;
    private java.util.UUID id;
    private String address;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        thermometers = new ThermometerStore(group.database(), group.audit());
        nights = new NightStore(group.database(), group.audit());
        tom = group.signedIn(group.member());
        id = thermometers.add(
                new NewThermometer("Behind the shed", group.member().id(), PLACE),
                group.member().id());
        address = "/frost/thermometers/" + id;
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void the_form_is_for_this_morning_and_has_keys_for_figures() {
        Answer page = tom.get(address);

        assertThat(page.typed("day")).isEqualTo("2027-03-01");
        assertThat(page.typed("temperature")).isEmpty();
        assertThat(page.body()).contains("inputmode=\"decimal\"").doesNotContain("name=\"sure\"");
        assertThat(page.text())
                .contains("Lowest temperature, °F")
                .contains("None of them is noted")
                .contains("a last frost date needs a whole spring");
    }

    @Test
    void a_night_is_kept_in_celsius_and_said_in_words() {
        Answer answer = note("2027-03-01", "28");

        assertThat(answer.status()).isEqualTo(303);
        assertThat(shown("2027-03-01")).hasValue(-2.2); // 28 °F as services round it, a killing frost
        assertThat(tom.get(address).text())
                .contains("28.0 °F killing frost Tom")
                .contains("1 of the nights from 31 Jan to 1 Mar are noted, 1 of them with frost")
                .contains("32.0 °F")
                .contains("1 night noted; a last frost date needs a whole spring");
    }

    @ParameterizedTest
    @CsvSource({"28,killing frost", "29,frost", "32,frost", "33,ground may freeze", "36.4,no frost"})
    void each_night_has_its_word(String typed, String word) {
        note("2027-02-28", typed);

        assertThat(tom.get(address).text()).contains("°F " + word + " Tom");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2027-03-01 | '' | '' | The lowest temperature is empty",
                "2027-03-01 | cold | '' | degrees Fahrenheit was 'cold'; a number from -76 to 113",
                "2027-03-01 | -80 | '' | degrees Fahrenheit was '-80'; a number from -76 to 113",
                "2027-03-01 | 80 | yes | degrees Fahrenheit was '-80'; a number from -76 to 113",
                "2027-03-01 | 114 | '' | degrees Fahrenheit was '114'",
                "2027-03-02 | 20 | '' | The morning was 2027-03-02, which is still to come; a day up to 2027-03-01",
                "1899-12-31 | 20 | '' | The morning was '1899-12-31'",
                "yesterday | 20 | '' | The morning was 'yesterday'; a date such as 2027-03-01",
                "'' | 20 | '' | The morning was ''"
            })
    void a_night_that_cannot_be_is_refused_and_nothing_typed_is_lost(
            String day, String temperature, String minus, String sentence) {
        Answer answer = tom.post(address + "/nights", Map.of("day", day, "temperature", temperature, "minus", minus));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("day")).isEqualTo(day);
        assertThat(thermometers.allRecords().get(0).minima().size()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"-4,''", "−4,''", "–4,''", "4,yes", "-4,yes"})
    void below_zero_is_typed_with_any_dash_or_ticked(String typed, String minus) {
        tom.post(address + "/nights", Map.of("day", "2027-03-01", "temperature", typed, "minus", minus));

        assertThat(shown("2027-03-01")).hasValue(-20.0); // -4 °F is -20 °C exactly
    }

    @Test
    void a_night_far_colder_than_those_around_it_is_asked_back_once() {
        noteAll("2027-02-26,30", "2027-02-27,28", "2027-02-28,31");

        Answer asked = note("2027-03-01", "9");

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.text())
                .contains("9.0 °F is more than 18 °F colder than any other night noted within three weeks"
                        + " (the coldest was 28.0 °F)")
                .contains("Yes, that is what it showed");
        assertThat(asked.typed("temperature")).isEqualTo("9");
        assertThat(shown("2027-03-01")).isEmpty();
        Answer sure = tom.post(address + "/nights", Map.of("day", "2027-03-01", "temperature", "9", "sure", "yes"));
        assertThat(sure.status()).isEqualTo(303);
        assertThat(shown("2027-03-01")).hasValue(-12.8);
    }

    @Test
    void a_warm_night_is_asked_back_and_being_sure_takes_nothing_impossible() {
        assertThat(note("2027-03-01", "80").text()).contains("80.0 °F is warm for the lowest of a night");
        assertThat(tom.post(address + "/nights", Map.of("day", "2027-03-01", "temperature", "200", "sure", "yes"))
                        .status())
                .isEqualTo(422);
    }

    @Test
    void a_night_noted_again_is_written_over_and_the_line_keeps_the_old_figure() {
        note("2027-03-01", "28");

        assertThat(tom.get(address).text()).contains("Noted for Mon 1 Mar: 28.0 °F , killing frost, by Tom");
        assertThat(tom.get(address).typed("temperature")).isEqualTo("28.0");
        Browser ilse = group.signedIn(group.coordinator());
        ilse.post(address + "/nights", Map.of("day", "2027-03-01", "temperature", "23"));

        assertThat(shown("2027-03-01")).hasValue(-5.0);
        assertThat(tom.get(address).text()).contains("23.0 °F killing frost Ilse");
        assertThat(lines()).contains("2027-03-01: -5.0 C, was -2.2 C");
    }

    @Test
    void a_wrong_night_is_taken_away_once_and_the_line_keeps_it() {
        note("2027-02-27", "28");

        assertThat(tom.get(address + "?day=2027-02-27").text()).contains("Take the night of Sat 27 Feb away");
        assertThat(remove("2027-02-27").status()).isEqualTo(303);
        assertThat(shown("2027-02-27")).isEmpty();
        assertThat(lines()).contains("2027-02-27: was -2.2 C");
        assertThat(remove("2027-02-27").status()).isEqualTo(404);
        assertThat(remove("soon").status()).isEqualTo(404);
    }

    @Test
    void an_address_with_a_day_that_cannot_be_shows_this_morning() {
        for (String day : new String[] {"2027-03-02", "1850-01-01", "nonsense"}) {
            assertThat(tom.get(address + "?day=" + day).typed("day")).isEqualTo("2027-03-01");
        }
    }

    @Test
    void many_nights_are_noted_at_once_in_several_ways_of_writing() {
        Answer answer = noteAll("2027-02-26,30", "2027-02-27; 28,4", "", "2027-02-28\t−4");

        assertThat(answer.status()).isEqualTo(303);
        assertThat(shown("2027-02-26")).hasValue(-1.1);
        assertThat(shown("2027-02-27")).hasValue(-2.0);
        assertThat(shown("2027-02-28")).hasValue(-20.0);
        assertThat(tom.get(address).text()).contains("3 nights noted");
    }

    @Test
    void one_wrong_line_keeps_all_out_and_every_wrong_line_is_told() {
        Answer answer = noteAll(
                "2027-02-26,30",
                "yesterday,28",
                "2027-02-27",
                "2027-03-02,20",
                "1899-01-01,20",
                "2027-02-25,200",
                "2027-02-26,31",
                "2027-02-29,30");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text())
                .contains("7 of the 8 lines cannot be read, so nothing was kept")
                .contains("Line 2: the date was 'yesterday'; one such as 2027-03-01 is accepted.")
                .contains("Line 3: '2027-02-27'; a date and a temperature such as 2027-03-01,28.4 are accepted.")
                .contains("Line 4: 2027-03-02 is still to come; a day up to 2027-03-01 is accepted.")
                .contains("Line 5: 1899-01-01 is too long ago")
                .contains("Line 6: the temperature was 200.0 degrees Fahrenheit; -76 to 113 are accepted.")
                .contains("Line 7: 2027-02-26 stands on an earlier line too")
                .contains("Line 8: the date was '2027-02-29'")
                .contains("1899-01-01,20");
        assertThat(thermometers.allRecords().get(0).minima().size()).isZero();
    }

    @Test
    void no_lines_and_too_many_lines_are_refused_and_a_long_list_is_not_cut_short() {
        String most = lines(400);
        String tooMany = lines(401);

        assertThat(noteAll("").text()).contains("The nights are empty");
        Answer refused = noteAll(tooMany);
        assertThat(refused.text()).contains("The nights have 401 lines; at most 400 are accepted at once");
        assertThat(refused.body()).contains(tooMany);
        assertThat(noteAll(most).status()).isEqualTo(303);
        assertThat(thermometers.allRecords().get(0).minima().size()).isEqualTo(400);
    }

    @Test
    void doubtful_nights_among_many_are_asked_back_once() {
        String[] typed = {"2027-02-24,30", "2027-02-25,30", "2027-02-26,30", "2027-02-27,3"};

        Answer asked = noteAll(typed);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.text()).contains("One night is doubtful", "2027-02-27: 3.0 °F is more than 18 °F colder");
        Answer sure = tom.post(address + "/many-nights", Map.of("nights", String.join("\n", typed), "sure", "yes"));
        assertThat(sure.status()).isEqualTo(303);
        assertThat(shown("2027-02-27")).hasValue(-16.1);
    }

    @Test
    void many_nights_over_noted_ones_keep_the_old_figures_in_their_lines() {
        note("2027-02-26", "28");

        noteAll("2027-02-26,30", "2027-02-27,30");

        assertThat(lines()).contains("2027-02-26: -1.1 C, was -2.2 C");
        assertThat(lines()).contains("2 from 2027-02-26 to 2027-02-27, 1 of them noted before");
    }

    @Test
    void a_whole_spring_gives_its_last_frost() {
        Map<LocalDate, Double> spring = new HashMap<>();
        LocalDate day = LocalDate.of(2026, 2, 1);
        for (; day.isBefore(LocalDate.of(2026, 8, 1)); day = day.plusDays(1)) {
            spring.put(day, day.isAfter(LocalDate.of(2026, 5, 20)) ? 6.0 : -1.0);
        }
        nights.noteAll(id, new java.util.TreeMap<>(spring), group.member().id());

        assertThat(tom.get(address).text())
                .contains("181 nights noted.")
                .contains("Spring 2026: the last frost was on Wed 20 May.")
                .contains("A frost here is a daily minimum of 0 °C or less")
                .doesNotContain("Autumn 2026");
    }

    private Answer note(String day, String temperature) {
        return tom.post(address + "/nights", Map.of("day", day, "temperature", temperature));
    }

    private Answer remove(String day) {
        return tom.post(address + "/removed-nights", Map.of("day", day));
    }

    private Answer noteAll(String... typed) {
        return tom.post(address + "/many-nights", Map.of("nights", String.join("\n", typed)));
    }

    private static String lines(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> LocalDate.of(2026, 1, 1).plusDays(i) + ",30")
                .collect(Collectors.joining("\n"));
    }

    private OptionalDouble shown(String day) {
        return thermometers.allRecords().get(0).minima().on(LocalDate.parse(day));
    }

    private List<String> lines() {
        return group.database()
                .sql()
                .select(AUDIT_LINE.DETAIL)
                .from(AUDIT_LINE)
                .where(AUDIT_LINE.SUBJECT_ID.eq(id.toString()))
                .fetch(AUDIT_LINE.DETAIL);
    }
}
