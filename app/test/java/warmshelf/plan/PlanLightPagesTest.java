package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.STAY;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;

class PlanLightPagesTest extends PlanOnPages {
    @Test
    void what_asked_for_light_is_planned_published_and_ticked_with_it() {
        String sowing = cellar.ask(withLight());
        String plan = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes"));
        assertThat(cellar.coordinator().get(plan).text())
                .contains("then Hall cellar · North rack · shelf 2, place 1, left half ");

        assertThat(publish(plan).status()).isEqualTo(303);

        assertThat(stays()).isEqualTo(2);
        assertThat(cellar.tick(sowing, Map.of("step", "sown")).status()).isEqualTo(303);
        assertThat(cellar.member().get("/sowings/" + sowing + "/entry").body())
                .contains("to its booked place, Hall cellar · North rack · shelf 2 · light · place 1, left half");
    }

    @Test
    void with_no_place_left_under_the_lights_nothing_is_put_on_the_heat_to_have_nowhere_to_go() {
        cellar.ask(withLight());
        fillTheLitShelf(cellar.ask(Cellar.peppers()));

        String withLight = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes"));
        String without = planned(Map.of("seconds", "5", "startingNumber", "1"));

        assertThat(cellar.coordinator().get(withLight).text())
                .contains(
                        "1 of 2 requests have a place",
                        "There is room on a mat, but no lit place for it when it comes off the heat.");
        assertThat(cellar.coordinator().get(without).text()).contains("2 of 2 requests have a place");
    }

    @Test
    void what_is_planned_where_it_lies_already_keeps_its_place_and_its_light() {
        cellar.ask(withLight());
        publish(planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes")));
        String stay = cellar.group()
                .database()
                .sql()
                .select(STAY.ID)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .where(PLACE.KIND.eq("mat"))
                .fetchSingle(STAY.ID)
                .toString();

        String again = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes", "free", stay));

        assertThat(cellar.coordinator().get(again).text()).contains("keeps its place; published now: ");
        publish(again);
        assertThat(sql().fetchCount(STAY)).as("nothing was laid anew").isEqualTo(2);
    }

    @Test
    void a_change_by_hand_takes_its_light_along() {
        String sowing = cellar.ask(withLight());
        String plan = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes"));
        Map<String, String> there = new HashMap<>(typed(plan + "/requests/" + sowing));
        there.put("place", "M1/2");
        there.put("quarter", "3");

        Answer changed = cellar.coordinator().post(plan + "/requests/" + sowing, there);

        assertThat(changed.status()).as(changed.text()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text())
                .contains("mat M1, place 2, right half", "then under the light");
    }

    private void fillTheLitShelf(String sowing) {
        StayStore stays = new StayStore(cellar.group().audit(), new ClashStore(CropCatalogue.bundled()));
        sql().transaction(tx -> tx.dsl()
                .select(PLACE.ID)
                .from(PLACE)
                .where(PLACE.KIND.eq("lit"))
                .forEach(place -> stays.layUnderLight(
                        tx.dsl(),
                        UUID.fromString(sowing),
                        new PlaceAndDays(place.value1(), new Slot(1, 4), TestGroup.TODAY, TestGroup.TODAY.plusDays(90)),
                        cellar.group().coordinator().id())));
    }

    private static Map<String, String> withLight() {
        Map<String, String> asked = new HashMap<>(Cellar.peppers());
        asked.put("after", "light");
        return asked;
    }
}
