package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class AreaPagesTest {
    private static final String PAGE = "/frost/areas";

    private TestGroup group;
    private GardenStore gardens;
    private Browser ilse;
    private Browser tom;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        gardens = new GardenStore(group.database(), group.audit());
        ilse = group.signedIn(group.coordinator());
        tom = group.signedIn(group.member());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_coordinator_corrects_an_area_and_members_read_it() {
        Answer answer = correct(Map.of("start", " 558-0 "));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(gardens.corrections().get(0).area()).isEqualTo(new Area.Postcodes("US", "5580"));
        assertThat(tom.get(PAGE).text())
                .contains("Postcodes that begin with 5580 (United States)")
                .contains("Last spring frost 5 days earlier")
                .contains("The lake keeps it warm")
                .contains("Ilse, 1 Mar 2027")
                .doesNotContain("Let it hold", "End it");
    }

    @Test
    void members_change_no_area() {
        correct(Map.of());
        String end = PAGE + "/" + gardens.corrections().get(0).id() + "/end";

        assertThat(tom.post(PAGE, fields(Map.of("start", "559"))).status()).isEqualTo(403);
        assertThat(tom.post(end).status()).isEqualTo(403);
        assertThat(gardens.corrections()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "country | XX | Country is not filled in",
                "start | '' | Beginning of the postcode is empty",
                "start | 5 | Beginning of the postcode was '5'; 2 to 12 letters and digits",
                "start | 5_5 | Beginning of the postcode was '5_5'",
                "start | 1234567890123 | Beginning of the postcode was '1234567890123'",
                "springDays | 99 | Days in spring was '99'",
                "reason | no | The reason was 'no'"
            })
    void an_area_that_cannot_be_is_refused_and_the_rest_is_kept(String field, String typed, String sentence) {
        Map<String, String> fields = new HashMap<>(Map.of("reason", "The lake keeps it warm"));
        fields.put(field, typed);

        Answer answer = correct(fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.body()).contains(fields.get("reason"));
        assertThat(gardens.corrections()).isEmpty();
    }

    @Test
    void one_correction_holds_for_an_area_and_others_for_other_areas() {
        correct(Map.of());
        correct(Map.of("springDays", "7"));
        correct(Map.of("start", "559"));

        assertThat(gardens.corrections()).hasSize(2);
        assertThat(ilse.get(PAGE).text())
                .contains("Last spring frost 7 days earlier")
                .contains("Ended corrections Postcodes that begin with 558 (United States) : last spring frost 5 days");
    }

    @Test
    void ending_one_ends_it_once_and_never_a_gardens() {
        correct(Map.of());
        new CorrectionStore(group.database(), group.audit())
                .correct(
                        new Area.Garden(group.member().id()),
                        new FrostCorrection.Change.Shift(3, 0),
                        "A hollow",
                        group.member().id());
        String area = idOf(new Area.Postcodes("US", "558"));
        String garden = idOf(new Area.Garden(group.member().id()));

        assertThat(ilse.post(PAGE + "/" + garden + "/end").status()).isEqualTo(404);
        assertThat(ilse.post(PAGE + "/" + area + "/end").status()).isEqualTo(303);
        assertThat(ilse.post(PAGE + "/" + area + "/end").status()).isEqualTo(404);
        assertThat(gardens.corrections()).hasSize(1);
    }

    private String idOf(Area area) {
        return gardens.corrections().stream()
                .filter(each -> each.area().equals(area))
                .findFirst()
                .orElseThrow()
                .id()
                .toString();
    }

    private Answer correct(Map<String, String> fields) {
        return ilse.post(PAGE, fields(fields));
    }

    private static Map<String, String> fields(Map<String, String> more) {
        Map<String, String> all = new HashMap<>(Map.of(
                "country", "US",
                "start", "558",
                "how", "shift",
                "springDays", "5",
                "springWay", "earlier",
                "reason", "The lake keeps it warm"));
        all.putAll(more);
        return all;
    }
}
