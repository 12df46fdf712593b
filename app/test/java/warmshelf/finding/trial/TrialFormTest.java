package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.seed.SeedSource;
import warmshelf.seed.Sharing;
import warmshelf.seed.Storage;
import warmshelf.words.Units;

class TrialFormTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final UUID TOM = new UUID(1, 1);
    private static final UUID PRIYA = new UUID(1, 2);
    private static final LotBalance PEPPERS = lot(1, "pepper", "Lantern Row", 60, TOM, false);
    private static final LotBalance TOMATOES = lot(2, "tomato", "Harbour Light", 60, PRIYA, false);
    private static final LotBalance TREATED = lot(3, "pepper", "Red Dye", 60, null, true);

    private static LotBalance lot(
            long id, String crop, String variety, int left, @Nullable UUID owner, boolean treated) {
        String name = owner == null ? null : owner.equals(TOM) ? "Tom" : "Priya";
        Lot lot = new Lot(
                new UUID(2, id),
                crop,
                variety,
                2026,
                left,
                owner,
                name,
                treated,
                "",
                SeedSource.PACKET,
                Storage.UNKNOWN,
                0,
                1);
        return new LotBalance(lot, Sharing.ASKED, List.of());
    }

    private static Map<String, String> bagOrTray() {
        return new HashMap<>(Map.of(
                "lot",
                PEPPERS.lot().id().toString(),
                "kind",
                "method",
                "seedsEach",
                "24",
                "blocks",
                "1",
                "sowOn",
                "2027-03-06"));
    }

    private static TrialForm form(Map<String, String> typed) {
        Map<String, List<String>> fields = new HashMap<>();
        typed.forEach((name, text) -> fields.put(name, List.of(text)));
        return new TrialForm(
                fields,
                List.of(PEPPERS, TOMATOES, TREATED),
                CropCatalogue.bundled(),
                new TrialForm.Who(TOM, false),
                TODAY,
                Units.AMERICAN);
    }

    @Test
    void tray_or_bag_needs_nothing_but_seed_and_a_day() {
        TrialDesign design = form(bagOrTray()).design().orElseThrow();

        assertThat(design.ways()).extracting(TrialWay::letter).containsExactly("A", "B");
        assertThat(design.ways())
                .extracting(way -> way.name(design.kind(), Units.METRIC))
                .containsExactly("the tray", "the bag");
        assertThat(design.seeds()).isEqualTo(48);
    }

    @Test
    void degrees_are_read_in_the_readers_units_and_a_third_way_may_be_left_out() {
        Map<String, String> typed = bagOrTray();
        typed.putAll(Map.of("kind", "warmth", "degreesA", "70", "degreesB", "80", "seedsEach", "20"));
        TrialDesign two = form(typed).design().orElseThrow();
        typed.put("degreesC", "86");
        TrialDesign three = form(typed).design().orElseThrow();

        assertThat(two.ways()).extracting(TrialWay::celsius).containsExactly(21, 27);
        assertThat(three.ways()).extracting(TrialWay::celsius).containsExactly(21, 27, 30);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "seedsEach | 1 | Seeds of each way was '1'; a whole number from 2 to 72 is accepted.",
                "seedsEach | 31 | Seeds of each way was 31. This lot has 60 seeds, and 62 are needed; at most 30 of each way are accepted.",
                "blocks | 0 | Trays or bags of each way was '0'; a whole number from 1 to 4 is accepted.",
                "sowOn | 2027-02-27 | The day of sowing was 2027-02-27; a day from 2027-03-01 to 2027-11-06 is accepted.",
                "sowOn | soon | The day of sowing was 'soon'; a date such as 2027-03-01 is accepted.",
                "lot | 00000000-0000-0002-0000-000000000002 | The lot was Harbour Light of Priya, who has to be asked; a lot of your own, of the group, or one that others may use without asking is accepted.",
                "lot | '' | The lot is empty; choose one from the list.",
                "lot | nonsense | The lot you chose is not in the seed box any more; choose one from the list.",
                "kind | luck | What differs was 'luck'; accepted are: method, heat, warmth, soak."
            })
    void what_cannot_be_used_is_named_with_what_is_accepted(String field, String typed, String sentence) {
        Map<String, String> fields = bagOrTray();
        fields.put(field, typed);
        TrialForm form = form(fields);

        assertThat(form.design()).isEmpty();
        assertThat(form.reader().problems()).containsEntry(field, sentence);
        assertThat(form.reader().typed()).containsEntry(field, typed);
    }

    @Test
    void one_way_is_no_trial() {
        Map<String, String> typed = bagOrTray();
        typed.putAll(Map.of("kind", "warmth", "degreesA", "75"));
        TrialForm form = form(typed);

        assertThat(form.design()).isEmpty();
        assertThat(form.reader().problems())
                .containsEntry("degreesB", "Way B in °F is empty; a whole number from 32 to 122 is accepted.");
    }

    @Test
    void two_ways_alike_and_degrees_that_kill_are_refused() {
        Map<String, String> typed = bagOrTray();
        typed.putAll(Map.of("kind", "warmth", "degreesA", "75", "degreesB", "75", "degreesC", "120"));
        TrialForm form = form(typed);

        assertThat(form.design()).isEmpty();
        assertThat(form.reader().problems().get("degreesB"))
                .isEqualTo("Way B was 75 °F, the same as way A; another whole degree Celsius is accepted.");
        assertThat(form.reader().problems().get("degreesC"))
                .startsWith("Way C was 120 °F, at which nobody has seen Pepper");
    }

    @Test
    void treated_seed_is_never_soaked() {
        Map<String, String> typed = bagOrTray();
        typed.putAll(Map.of("kind", "soak", "lot", TREATED.lot().id().toString()));
        TrialForm form = form(typed);

        assertThat(form.design()).isEmpty();
        assertThat(form.reader().problems().get("kind")).contains("Red Dye is treated seed, which is never soaked");
    }

    @Test
    void soaked_seed_needs_the_evening_before() {
        Map<String, String> typed = bagOrTray();
        typed.putAll(Map.of("kind", "soak", "sowOn", TODAY.toString()));

        assertThat(form(typed).design()).isEmpty();
        typed.put("sowOn", TODAY.plusDays(1).toString());
        assertThat(form(typed).design().orElseThrow().ways())
                .extracting(TrialWay::soaked)
                .containsExactly(true, false);
    }
}
