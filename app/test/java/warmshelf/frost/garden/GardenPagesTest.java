package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.Hardiness;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class GardenPagesTest {
    private static final String PAGE = "/frost/garden";

    private TestGroup group;
    private GardenStore gardens;
    private Browser tom;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        gardens = new GardenStore(group.database(), group.audit());
        tom = group.signedIn(group.member());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_garden_nobody_told_of_says_so() {
        Answer page = tom.get(PAGE);

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text())
                .contains("the middle of your postcode counts")
                .contains("None: the worked-out dates count as they are")
                .contains("Tender plants");
        assertThat(page.body()).contains("href=\"/frost\"", "As usual: 10 %, one year in ten");
    }

    @Test
    void a_point_in_feet_is_kept_in_metres_and_shown_in_feet() {
        Answer answer = setPoint("46.84", "-92.22", "1405", "0");

        assertThat(answer.status()).isEqualTo(303);
        GardenPoint point = gardens.point(group.member().id()).orElseThrow();
        assertThat(point.latitude()).isEqualTo(46.84);
        assertThat(point.longitude()).isEqualTo(-92.22);
        assertThat(point.elevationM()).isCloseTo(428.2, org.assertj.core.api.Assertions.within(0.1));
        Answer page = tom.get(PAGE);
        assertThat(page.text()).contains("46.84° N, 92.22° W, 1,405 ft above the sea");
        assertThat(page.typed("elevation")).isEqualTo("1405");
    }

    @Test
    void a_long_dash_before_a_longitude_is_a_minus() {
        setPoint("46,84", "–92.22", "1405", "0");

        assertThat(gardens.point(group.member().id()).orElseThrow().longitude()).isEqualTo(-92.22);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "latitude | 91 | Latitude was '91'; a number from -90 to 90",
                "latitude | '' | Latitude is empty",
                "longitude | west | Longitude was 'west'; a number from -180 to 180",
                "elevation | 30000 | Elevation in feet was '30000'; a number from -1411 to 21325",
                "elevation | '' | Elevation is empty"
            })
    void a_point_that_cannot_be_is_refused_and_the_rest_is_kept(String field, String typed, String sentence) {
        Map<String, String> fields =
                new HashMap<>(Map.of("latitude", "46.84", "longitude", "-92.22", "elevation", "1405", "version", "0"));
        fields.put(field, typed);

        Answer answer = tom.post(PAGE + "/point", fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed(field)).isEqualTo(typed);
        assertThat(gardens.point(group.member().id())).isEmpty();
    }

    @Test
    void a_point_changed_meanwhile_is_not_written_over_unseen() {
        setPoint("46.84", "-92.22", "1405", "0");

        Answer answer = setPoint("47.00", "-92.00", "700", "0");

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("The point was changed while you were typing; it is now 46.84° N");
        assertThat(answer.typed("latitude")).isEqualTo("47.00");
        Answer again = setPoint("47.00", "-92.00", "700", String.valueOf(answer.typed("version")));
        assertThat(again.status()).isEqualTo(303);
        assertThat(gardens.point(group.member().id()).orElseThrow().latitude()).isEqualTo(47.0);
    }

    @Test
    void a_point_is_cleared_once() {
        setPoint("46.84", "-92.22", "1405", "0");
        String version = String.valueOf(tom.get(PAGE).typed("version"));

        assertThat(tom.post(PAGE + "/no-point", Map.of("version", version)).status())
                .isEqualTo(303);
        assertThat(gardens.point(group.member().id())).isEmpty();
        assertThat(tom.post(PAGE + "/no-point", Map.of("version", version)).status())
                .isEqualTo(409);
        assertThat(tom.post(PAGE + "/no-point", Map.of("version", "x")).status())
                .isEqualTo(409);
    }

    @Test
    void days_later_and_earlier_hold_with_reason_name_and_day() {
        Answer answer = correct(Map.of(
                "how", "shift", "springDays", "6", "springWay", "later", "autumnDays", "4", "autumnWay", "earlier"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(gardens.corrections()).singleElement().satisfies(correction -> {
            assertThat(correction.area())
                    .isEqualTo(new Area.Garden(group.member().id()));
            assertThat(correction.change()).isEqualTo(new FrostCorrection.Change.Shift(6, -4));
        });
        assertThat(tom.get(PAGE).text())
                .contains("Last spring frost 6 days later, first autumn frost 4 days earlier")
                .contains("Cold air runs down here")
                .contains("Tom, 1 Mar 2027");
    }

    @Test
    void dates_hold_as_they_were_given() {
        correct(Map.of("how", "dates", "springAverage", "24 May", "springOneInTen", "06-08"));

        assertThat(tom.get(PAGE).text())
                .contains("Last spring frost on average: 24 May, after this day in one spring of ten: 8 June");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "how= | How you tell it was not chosen",
                "how=shift | changes nothing; a whole number from 1 to 40",
                "how=shift springDays=41 | Days in spring was '41'; a whole number from 0 to 40",
                "how=shift springDays=-3 | Days in spring was '-3'; a whole number from 0 to 40",
                "how=shift springDays=2.5 | Days in spring was '2.5'",
                "how=shift springDays=2 springWay=sideways | neither later nor earlier",
                "how=shift springDays=2 springAverage=05-24 | yet a date is filled in too",
                "how=dates | No date is filled in",
                "how=dates springAverage=05-24 autumnDays=3 | yet days are filled in too",
                "how=dates springAverage=24/5 | Last spring frost on average was '24/5'; a day and month such as 24"
                        + " May",
                "how=dates springAverage=30feb | Last spring frost on average was '30feb'",
                "how=dates springAverage=05-24 springOneInTen=05-20 | cannot come before the average",
                "how=dates autumnAverage=10-01 autumnOneInTen=10-02 | cannot come after the average",
                "how=shift springDays=2 reason= | The reason is empty",
                "how=shift springDays=2 reason=cold | The reason was 'cold'; 5 to 300 characters"
            })
    void a_correction_that_cannot_be_is_refused_with_a_sentence(String typed, String sentence) {
        Map<String, String> fields = new HashMap<>();
        for (String field : typed.split(" ", -1)) {
            String[] pair = field.split("=", 2);
            fields.put(pair[0], pair[1]);
        }

        Answer answer = correct(fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(gardens.corrections()).isEmpty();
    }

    @Test
    void a_reason_that_is_too_long_is_refused_with_its_length() {
        Answer answer = correct(Map.of("how", "shift", "springDays", "2", "reason", "x".repeat(301)));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("The reason has 301 characters; at most 300 fit");
        assertThat(answer.body()).contains("x".repeat(301));
    }

    @Test
    void a_new_correction_ends_the_one_before_which_stays_in_the_history() {
        correct(Map.of("how", "shift", "springDays", "6"));
        correct(Map.of("how", "shift", "springDays", "3", "reason", "Six were too many"));

        assertThat(gardens.corrections()).hasSize(1);
        assertThat(tom.get(PAGE).text())
                .contains("Six were too many")
                .contains("Ended corrections")
                .contains("Made by Tom on 1 Mar 2027, ended by Tom on 1 Mar 2027");
    }

    @Test
    void only_ones_own_correction_is_ended_and_only_once() {
        correct(Map.of("how", "shift", "springDays", "6"));
        String end = PAGE + "/corrections/" + gardens.corrections().get(0).id() + "/end";

        assertThat(group.signedIn(group.coordinator()).post(end).status()).isEqualTo(404);
        assertThat(group.signedIn(group.onDuty()).post(end).status()).isEqualTo(404);
        assertThat(gardens.corrections()).hasSize(1);
        assertThat(tom.post(end).status()).isEqualTo(303);
        assertThat(gardens.corrections()).isEmpty();
        assertThat(tom.post(end).status()).isEqualTo(404);
    }

    @Test
    void nobody_sees_another_members_point_or_correction() {
        setPoint("46.84", "-92.22", "1405", "0");
        correct(Map.of("how", "shift", "springDays", "6"));

        assertThat(group.signedIn(group.coordinator()).get(PAGE).text())
                .doesNotContain("46.84° N", "Cold air runs down here");
    }

    @Test
    void an_areas_correction_is_shown_where_the_garden_has_none() {
        new CorrectionStore(group.database(), group.audit())
                .correct(
                        new Area.Postcodes("US", "558"),
                        new FrostCorrection.Change.Shift(-5, 0),
                        "The lake keeps it warm",
                        group.coordinator().id());

        assertThat(tom.get(PAGE).text())
                .contains("A correction for postcodes that begin with 558 (United States) holds for your garden:"
                        + " last spring frost 5 days earlier")
                .contains("Ilse");
    }

    @Test
    void the_chances_accepted_are_kept_and_as_usual_is_no_row() {
        Answer answer = tom.post(
                PAGE + "/risks",
                Map.of(
                        "risk-hardy",
                        "usual",
                        "risk-half-hardy",
                        "0.1",
                        "risk-tender",
                        "0.3",
                        "risk-very-tender",
                        "0.1"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(new AcceptedRiskStore(group.database(), group.audit())
                        .of(group.member().id()))
                .containsExactlyInAnyOrderEntriesOf(Map.of(Hardiness.HALF_HARDY, 0.1, Hardiness.TENDER, 0.3));
        assertThat(selected(tom.get(PAGE), "risk-tender")).isEqualTo("0.3");
        assertThat(selected(tom.get(PAGE), "risk-very-tender")).isEqualTo("usual");
    }

    @Test
    void a_chance_that_is_not_offered_is_refused_and_nothing_is_kept() {
        Answer answer = tom.post(
                PAGE + "/risks",
                Map.of("risk-hardy", "0.9", "risk-half-hardy", "0.1", "risk-tender", "0.3", "risk-very-tender", "0.1"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("The chance for hardy plants was '0.9'; 'as usual', 50 %, 30 % and 10 %");
        assertThat(selected(answer, "risk-tender")).isEqualTo("0.3");
        assertThat(new AcceptedRiskStore(group.database(), group.audit())
                        .of(group.member().id()))
                .isEmpty();
    }

    @Test
    void a_plan_starts_from_the_chance_accepted_and_may_choose_another() {
        tom.post(
                PAGE + "/risks",
                Map.of(
                        "risk-hardy",
                        "usual",
                        "risk-half-hardy",
                        "usual",
                        "risk-tender",
                        "0.5",
                        "risk-very-tender",
                        "0.5"));
        Map<String, String> asked = warmshelf.loop.Cellar.peppers();
        asked.putAll(Map.of("heat", "room", "crop", "tomato"));

        assertThat(acceptedBySowing(asked)).contains("accepting a later frost 50 % of the years");
        asked.put("risk", "0.1");
        assertThat(acceptedBySowing(asked)).contains("accepting a later frost 10 % of the years");
    }

    private String acceptedBySowing(Map<String, String> asked) {
        Answer sent = tom.post("/sowings", asked);
        assertThat(sent.status()).as(sent.text()).isEqualTo(303);
        return tom.get(sent.location()).text();
    }

    @Test
    void the_frost_page_counts_what_was_told_here() {
        correct(Map.of("how", "dates", "springAverage", "19 June"));
        tom.post(
                PAGE + "/risks",
                Map.of(
                        "risk-hardy", "usual",
                        "risk-half-hardy", "usual",
                        "risk-tender", "0.5",
                        "risk-very-tender", "usual"));

        assertThat(tom.get("/frost").text()).contains("Cold air runs down here", "Tom, 1 Mar", "19 Jun");
        assertThat(group.signedIn(group.onDuty()).get("/frost").text()).doesNotContain("Cold air runs down here");
    }

    @Test
    void every_change_leaves_a_line_and_no_form_without_its_token_does_anything() {
        setPoint("46.84", "-92.22", "1405", "0");
        correct(Map.of("how", "shift", "springDays", "6"));

        for (String path : new String[] {"/point", "/no-point", "/corrections", "/risks"}) {
            assertThat(tom.postAsIs(PAGE + path, Map.of("version", "1")).status())
                    .as(path)
                    .isEqualTo(403);
        }
        assertThat(group.database()
                        .sql()
                        .select(AUDIT_LINE.SUBJECT)
                        .from(AUDIT_LINE)
                        .where(AUDIT_LINE.MEMBER_ID.eq(group.member().id()))
                        .fetch(AUDIT_LINE.SUBJECT))
                .contains("garden point", "frost correction");
    }

    private Answer setPoint(String latitude, String longitude, String elevation, String version) {
        return tom.post(
                PAGE + "/point",
                Map.of("latitude", latitude, "longitude", longitude, "elevation", elevation, "version", version));
    }

    private Answer correct(Map<String, String> fields) {
        Map<String, String> all = new HashMap<>(Map.of("reason", "Cold air runs down here"));
        all.putAll(fields);
        return tom.post(PAGE + "/corrections", all);
    }

    private static String selected(Answer page, String field) {
        Matcher select = Pattern.compile("(?s)<select[^>]*name=\"" + field + "\".*?</select>")
                .matcher(page.body());
        assertThat(select.find()).isTrue();
        Matcher option = Pattern.compile("value=\"([^\"]*)\" selected").matcher(select.group());
        return option.find() ? option.group(1) : "";
    }
}
