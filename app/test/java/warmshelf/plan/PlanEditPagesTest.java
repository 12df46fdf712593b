package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class PlanEditPagesTest extends PlanOnPages {
    @Test
    void a_plan_keeps_a_mat_at_the_whole_degree_fahrenheit_at_which_something_lies_there() {
        String lying = cellar.ask(Cellar.peppers());
        String offered = "/requests/" + lying + "/placement";
        Map<String, String> offer = Cellar.hiddenFields(
                cellar.coordinator().get("/requests/" + lying).body(), offered);
        offer.put("celsius", "81");
        assertThat(cellar.coordinator().post(offered, offer).status()).isEqualTo(303);
        String second = cellar.ask(Cellar.peppers());

        String plan = planned();

        String page = cellar.coordinator().get(plan).text();
        assertThat(page).contains("1 of 1 requests have a place", "81 °F").doesNotContain("80 °F");
        assertThat(publish(plan).status()).isEqualTo(303);
        assertThat(state(second)).isEqualTo("placed");
        assertThat(sql().selectDistinct(QUARTER_DAY.CELSIUS)
                        .from(QUARTER_DAY)
                        .where(QUARTER_DAY.KIND.eq("mat"))
                        .fetch(QUARTER_DAY.CELSIUS))
                .containsExactly(27.2);
    }

    @Test
    void a_set_point_typed_into_a_plan_is_read_and_published_as_typed() {
        String sowing = cellar.ask(Cellar.peppers());
        String plan = planned();
        Map<String, String> typed = typed(plan + "/requests/" + sowing);
        typed.put("celsius", "81");

        Answer changed = cellar.coordinator().post(plan + "/requests/" + sowing, typed);

        assertThat(changed.status()).as(changed.text()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text()).contains("81 °F");
        assertThat(typed(plan + "/requests/" + sowing)).containsEntry("celsius", "81");
        publish(plan);
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("hot 81 °F");
    }

    @Test
    void a_change_by_hand_is_judged_before_it_is_kept() {
        String first = cellar.ask(Cellar.peppers());
        String second = cellar.ask(Cellar.peppers());
        String plan = planned();
        String editor = plan + "/requests/" + second;
        Map<String, String> there = typed(plan + "/requests/" + first);

        Map<String, String> same = new HashMap<>(there);
        Answer clash = cellar.coordinator().post(editor, same);

        assertThat(clash.status()).isEqualTo(422);
        assertThat(clash.text()).contains("both lie on quarter");
        assertThat(clash.typed("from")).isEqualTo(there.get("from"));

        same.put("place", "M1/2");
        same.put("quarter", "3");
        assertThat(cellar.coordinator().post(editor, same).status()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text()).contains("mat M1, place 2, right half");
    }

    @Test
    void the_second_coordinator_to_change_a_plan_sees_what_the_first_changed() {
        String first = cellar.ask(Cellar.peppers());
        String plan = planned();
        Map<String, String> removal = Map.of("version", "1");
        assertThat(cellar.coordinator()
                        .post(plan + "/requests/" + first + "/removal", removal)
                        .status())
                .isEqualTo(303);
        Map<String, String> late = new HashMap<>(typed(plan + "/requests/" + first));
        late.putAll(Map.of("version", "1", "place", "M1/2", "quarter", "1"));

        Answer answer = cellar.coordinator().post(plan + "/requests/" + first, late);

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text())
                .contains("Not kept: Tom's")
                .contains("Changed since you opened it: Ilse: Tom's")
                .contains("taken out");
        Answer published = cellar.coordinator().post(plan + "/publication", Map.of("version", "1"));
        assertThat(published.status()).isEqualTo(409);
        assertThat(stays()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from | 2030-03-10 | The first day was 2030-03-10; a day from",
                "from | soon | The first day was 'soon'; a date such as 2027-03-01 is accepted.",
                "place | M1/9 | The place is not one of the group's mats; choose one from the list.",
                "place | nonsense | The place is not one of the group's mats; choose one from the list.",
                "quarter | 2 | The part of the place was '2'; accepted are: 1, 3.",
                "celsius | 60 | this crop's seed likes",
                "version | x | The plan's version was 'x'; a whole number"
            })
    void a_change_that_cannot_be_is_refused_with_its_sentence(String field, String typed, String sentence) {
        String sowing = cellar.ask(Cellar.peppers());
        String plan = planned();
        Map<String, String> fields = new HashMap<>(typed(plan + "/requests/" + sowing));
        fields.put(field, typed);

        Answer answer = cellar.coordinator().post(plan + "/requests/" + sowing, fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
    }
}
