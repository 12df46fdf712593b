package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import warmshelf.words.FormReader;

class ShelvingFormsTest {
    @Test
    void a_shelf_with_lit_places_needs_the_watts_of_its_lights() {
        FormReader reader = reader("fromTop", "1", "litPlaces", "4", "lightWatts", "");

        ShelfForm.read(reader);

        assertThat(reader.problems()).containsOnlyKeys("lightWatts");
    }

    @Test
    void a_shelf_without_lights_needs_only_its_level() {
        FormReader reader = reader("fromTop", "2");

        assertThat(ShelfForm.read(reader)).isEqualTo(new ShelfDraft(2, 0, 0));
        assertThat(reader.ok()).isTrue();
    }

    @Test
    void the_lamps_of_a_shelf_come_back_as_they_were_typed_and_nothing_said_stays_unknown() {
        FormReader reader = reader(
                "fromTop",
                "1",
                "litPlaces",
                "4",
                "lightWatts",
                "80",
                "lamp",
                "led",
                "lampHours",
                "14",
                "lampTimer",
                "no");

        ShelfDraft draft = ShelfForm.read(reader);

        assertThat(reader.ok()).isTrue();
        assertThat(draft.lamp()).isEqualTo(new Lamp(Lamp.Kind.LED, 14, false));
        assertThat(draft.lamp().words()).isEqualTo("LED lamps, 14 hours a day, switched by hand");
        assertThat(ShelfForm.read(reader("fromTop", "1")).lamp()).isEqualTo(Lamp.NOT_KNOWN);
        FormReader wrong = reader("fromTop", "1", "lamp", "candle", "lampHours", "25", "lampTimer", "maybe");
        ShelfForm.read(wrong);
        assertThat(wrong.problems()).containsOnlyKeys("lamp", "lampHours", "lampTimer");
    }

    @Test
    void a_site_with_half_amps_comes_back_as_it_was_typed() {
        Site site = new Site(DrawnCellar.M1, "Garage", 2, new Circuit(12.5, 230), "Key under the pot", 3, List.of());

        FormReader reader = new FormReader(SiteForm.typed(site));

        assertThat(SiteForm.read(reader))
                .isEqualTo(new SiteDraft("Garage", 2, new Circuit(12.5, 230), "Key under the pot"));
        assertThat(reader.typed()).containsEntry("version", "3").containsEntry("amps", "12.5");
    }

    @Test
    void a_name_of_ten_million_letters_is_refused() {
        FormReader reader = reader("name", "x".repeat(10_000_000), "walkOrder", "1");

        RackForm.read(reader);

        assertThat(reader.problems().get("name")).contains("10,000,000 characters", "at most 40");
        assertThat(reader.typed().get("name")).hasSizeLessThan(21_000);
    }

    private static FormReader reader(String... more) {
        Map<String, List<String>> typed = new HashMap<>();
        for (int index = 0; index < more.length; index += 2) {
            typed.put(more[index], List.of(more[index + 1]));
        }
        return new FormReader(typed);
    }
}
