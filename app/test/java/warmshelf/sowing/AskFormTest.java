package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.seed.Lot;
import warmshelf.seed.SeedSource;
import warmshelf.seed.Storage;
import warmshelf.testing.Crops;
import warmshelf.words.LengthUnit;

class AskFormTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Lot TOMATOES = new Lot(
            new UUID(5, 5),
            "tomato",
            "Harbour Light",
            2025,
            40,
            null,
            null,
            true,
            "",
            SeedSource.PACKET,
            Storage.UNKNOWN,
            0,
            1);

    @Test
    void a_good_asking_is_read_whole() {
        AskForm.Ask ask = form(good()).ask().orElseThrow();

        assertThat(ask.packet())
                .isEqualTo(new AskForm.Packet(
                        Crops.PEPPER, "Lantern Row", 2027, 40, 18, 20, false, SeedSource.PACKET, Storage.UNKNOWN));
        assertThat(ask.lot()).isNull();
        assertThat(ask.plants()).isEqualTo(10);
        assertThat(ask.method()).isEqualTo(Method.CELLS);
        assertThat(ask.container()).isEqualTo(Container.HALF_TRAY);
        assertThat(ask.cellsInATray()).isEqualTo(72);
        assertThat(ask.warm()).isTrue();
        assertThat(ask.underCoverOn()).isNull();
        assertThat(ask.chosenRisk()).isZero();
    }

    @Test
    void a_lot_of_the_seed_box_settles_crop_variety_and_treatment() {
        AskForm.Ask ask = form(with(Map.of("lot", TOMATOES.id().toString(), "crop", "", "variety", "")))
                .ask()
                .orElseThrow();

        assertThat(ask.lot()).isEqualTo(TOMATOES);
        assertThat(ask.packet()).isNull();
        assertThat(ask.variety()).isEqualTo("Harbour Light");
        assertThat(ask.treated()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "crop | moonflower | The crop was 'moonflower'; choose one from the list.",
                "crop | '' | The crop is empty; choose one from the list.",
                "variety | '' | The variety is empty; please fill it in.",
                "seedYear | 2028 | The year on the packet was '2028'; a whole number from 1980 to 2027 is accepted.",
                "seedYear | 1979 | The year on the packet was '1979'; a whole number from 1980 to 2027 is accepted.",
                "germinated | 21 | Sprouted in a test was 21 of 20; no more can sprout than were tested.",
                "germinated | '' | A test needs both figures: how many sprouted, and of how many.",
                "packetSeeds | 0 | Seeds in the packet was '0'; a whole number from 1 to 100,000 is accepted.",
                "plants | 0 | Plants wanted was '0'; a whole number from 1 to 1,000 is accepted.",
                "plants | -3 | Plants wanted was '-3'; a whole number from 1 to 1,000 is accepted.",
                "plants | 10,000 | Plants wanted was '10,000'; a whole number from 1 to 1,000 is accepted.",
                "plants | 10000 | Plants wanted was '10000'; a whole number from 1 to 1,000 is accepted.",
                "plants | ten | Plants wanted was 'ten'; a whole number from 1 to 1,000 is accepted.",
                "plants | '' | Plants wanted is empty; a whole number from 1 to 1,000 is accepted.",
                "method | broadcast | The method was 'broadcast'; accepted are: cells, bag.",
                "heat | tropical | Warm or not was 'tropical'; accepted are: warm, room.",
                "container | bucket | The tray was 'bucket'; accepted are: half-tray, tray, own.",
                "cellsInATray | 73 | Cells in a whole tray was '73'; accepted are: 18, 32, 36, 48, 50, 72, 98, 128, 200, 288.",
                "seedsPerCell | 5 | Seeds to a cell was '5'; a whole number from 1 to 4 is accepted.",
                "where | moon | Where the plants go was 'moon'; accepted are: outdoors, cover.",
                "risk | 0.2 | The risk of a later frost was '0.2'; accepted are: 0.5, 0.3, 0.1.",
                "lot | 00000000-0000-0009-0000-000000000009 | The lot you chose is not in the seed box any more; choose another or a new packet.",
                "lot | nonsense | The lot you chose is not in the seed box any more; choose another or a new packet."
            })
    void what_cannot_be_taken_is_named_with_what_was_given_and_what_is_accepted(
            String field, String typed, String sentence) {
        AskForm form = form(with(Map.of(field, typed)));

        assertThat(form.ask()).isEmpty();
        assertThat(form.reader().problems()).containsValue(sentence);
        assertThat(form.reader().typed()).containsEntry(field, typed).containsEntry("note", "by the window");
    }

    @Test
    void one_fault_makes_one_sentence() {
        assertThat(problems(with(Map.of("plants", "-3")))).containsOnlyKeys("plants");
        assertThat(problems(with(Map.of("crop", "moonflower")))).containsOnlyKeys("crop");
        assertThat(problems(with(Map.of("method", "broadcast")))).containsOnlyKeys("method");
    }

    @Test
    void a_tray_larger_than_a_place_is_refused_in_the_units_of_whoever_asks() {
        Map<String, List<String>> european = with(Map.of("container", "own", "trayLong", "60", "trayShort", "40"));
        Map<String, List<String>> big = with(Map.of("container", "own", "trayLong", "11.5", "trayShort", "23.6"));

        assertThat(problems(european))
                .containsEntry(
                        "trayLong",
                        "A tray of 60.0 cm by 40.0 cm is larger than a place,"
                                + " which holds one standard tray of 53.3 cm by 27.7 cm.");
        assertThat(problems(inInches(big)))
                .containsEntry(
                        "trayLong",
                        "A tray of 11.5 in by 23.6 in is larger than a place,"
                                + " which holds one standard tray of 21.0 in by 10.9 in.");
    }

    @Test
    void a_tray_of_ones_own_takes_the_room_it_needs() {
        assertThat(form(with(Map.of("container", "own", "trayLong", "27,5", "trayShort", "26")))
                        .ask()
                        .orElseThrow()
                        .container())
                .isEqualTo(Container.HALF_TRAY);
        assertThat(inInches(with(Map.of("container", "own", "trayLong", "21", "trayShort", "10.5")))
                        .ask()
                        .orElseThrow()
                        .container())
                .isEqualTo(Container.TRAY);
    }

    @ParameterizedTest
    @CsvSource({"-1", "0", "'' ", "NaN", "1e9", "wide"})
    void a_side_that_is_no_length_is_refused(String typed) {
        assertThat(problems(with(Map.of("container", "own", "trayLong", typed, "trayShort", "26"))))
                .containsEntry(
                        "trayLong",
                        "The tray's longer side in centimetres was '" + typed.strip()
                                + "'; a number from 1 to 200 is accepted.");
    }

    @Test
    void a_day_under_cover_that_has_passed_or_is_no_day_is_refused() {
        assertThat(problems(with(Map.of("where", "cover", "coverOn", "2027-02-28"))))
                .containsEntry(
                        "coverOn",
                        "The day they go out under cover was 2027-02-28;"
                                + " a day from 2027-03-01 to 2029-03-01 is accepted.");
        assertThat(problems(with(Map.of("where", "cover", "coverOn", "2207-04-01"))))
                .containsKey("coverOn");
        assertThat(problems(with(Map.of("where", "cover", "coverOn", "1 May"))))
                .containsEntry(
                        "coverOn",
                        "The day they go out under cover was '1 May'; a date such as 2027-03-01 is accepted.");
        assertThat(problems(with(Map.of("where", "cover", "coverOn", ""))))
                .containsEntry(
                        "coverOn", "The day they go out under cover was ''; a date such as 2027-03-01 is accepted.");
        assertThat(form(with(Map.of("where", "cover", "coverOn", "2027-03-01")))
                        .ask()
                        .orElseThrow()
                        .underCoverOn())
                .isEqualTo(TODAY);
    }

    @Test
    void a_lot_and_a_crop_that_disagree_are_both_named() {
        assertThat(problems(with(Map.of("lot", TOMATOES.id().toString()))))
                .containsEntry(
                        "crop",
                        "You chose Pepper, sweet and mild hot, but the lot Harbour Light is Tomato;"
                                + " choose one or the other.");
    }

    @Test
    void a_variety_of_ten_million_letters_is_counted_and_not_repeated() {
        String sentence =
                problems(with(Map.of("variety", "x".repeat(10_000_000)))).get("variety");

        assertThat(sentence).isEqualTo("The variety has 10,000,000 characters; at most 80 fit.");
        assertThat(problems(with(Map.of("crop", "x".repeat(10_000_000)))).get("crop"))
                .isEqualTo("The crop was '…'; choose one from the list.");
    }

    @Test
    void a_bag_takes_one_quarter_and_one_seed_to_a_cell_whatever_the_tray_fields_say() {
        AskForm.Ask ask = form(with(Map.of("method", "bag", "container", "own", "seedsPerCell", "3")))
                .ask()
                .orElseThrow();

        assertThat(ask.container()).isEqualTo(Container.BAG);
        assertThat(ask.seedsPerCell()).isEqualTo(1);
    }

    @Test
    void an_empty_form_is_refused_without_a_fault_of_ours() {
        AskForm form = form(Map.of());

        assertThat(form.ask()).isEmpty();
        assertThat(form.reader().problems()).containsKeys("crop", "variety", "plants", "method", "heat", "where");
    }

    private static Map<String, String> problems(Map<String, List<String>> typed) {
        return problems(form(typed));
    }

    private static Map<String, String> problems(AskForm form) {
        assertThat(form.ask()).isEmpty();
        return form.reader().problems();
    }

    private static AskForm form(Map<String, List<String>> typed) {
        return new AskForm(typed, CropCatalogue.bundled(), List.of(TOMATOES), TODAY, 2027, LengthUnit.CENTIMETRES);
    }

    private static AskForm inInches(Map<String, List<String>> typed) {
        return new AskForm(typed, CropCatalogue.bundled(), List.of(TOMATOES), TODAY, 2027, LengthUnit.INCHES);
    }

    private static Map<String, List<String>> with(Map<String, String> changes) {
        Map<String, List<String>> typed = new HashMap<>(good());
        changes.forEach((field, text) -> typed.put(field, List.of(text)));
        return typed;
    }

    private static Map<String, List<String>> good() {
        Map<String, List<String>> typed = new HashMap<>();
        Map.ofEntries(
                        Map.entry("lot", "new"),
                        Map.entry("crop", "pepper"),
                        Map.entry("variety", "Lantern Row"),
                        Map.entry("seedYear", "2027"),
                        Map.entry("packetSeeds", "40"),
                        Map.entry("germinated", "18"),
                        Map.entry("tested", "20"),
                        Map.entry("plants", "10"),
                        Map.entry("method", "cells"),
                        Map.entry("heat", "warm"),
                        Map.entry("container", "half-tray"),
                        Map.entry("cellsInATray", "72"),
                        Map.entry("seedsPerCell", "1"),
                        Map.entry("where", "outdoors"),
                        Map.entry("risk", ""),
                        Map.entry("note", "by the window"))
                .forEach((field, text) -> typed.put(field, List.of(text)));
        return typed;
    }
}
