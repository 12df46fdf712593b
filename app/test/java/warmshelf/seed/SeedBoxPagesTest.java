package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class SeedBoxPagesTest {
    private TestGroup group;
    private LotStore lots;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        lots = new LotStore(group.database(), group.audit());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void an_empty_box_says_so() {
        assertThat(member().get("/seeds").text()).contains("The box is empty");
    }

    @Test
    void a_lot_that_was_added_is_listed_with_all_that_matters() {
        Answer added = member().post("/seeds", lot(Map.of("seeds", "40", "treated", "yes")));
        Answer list = member().get("/seeds");

        assertThat(added.status()).isEqualTo(303);
        assertThat(added.location()).startsWith("/seeds/");
        assertThat(list.text())
                .contains("Harbour Light")
                .contains("Pepper, sweet and mild hot")
                .contains("2025 · Tom · 40 · about ")
                .contains("Treated")
                .contains("in 10 come up");
        assertThat(member().get(added.location()).text()).contains("in 10 (likely");
    }

    @Test
    void a_measured_storage_is_kept_and_shown() {
        Answer added = member().post(
                        "/seeds",
                        lot(Map.of(
                                "source",
                                "saved",
                                "storage",
                                "own",
                                "storageTemperature",
                                "40,1",
                                "storageMoisture",
                                "6.5")));

        Lot lot = lots.list(LotSearch.everything()).get(0);
        assertThat(added.status()).isEqualTo(303);
        assertThat(lot.storage()).isEqualTo(Storage.measured(4.5, 6.5));
        assertThat(lot.source()).isEqualTo(SeedSource.SAVED);
        assertThat(member().get(added.location()).text())
                .contains("saved from our own plants")
                .contains("Measured: kept at 40 °F and 6.5 % moisture")
                .contains("In a room about half of such seed is alive after 6 years")
                .contains("Demir et al. 2009");
    }

    @Test
    void old_untested_seed_says_test_ten_first_and_how_and_what_to_sow_meanwhile() {
        String page = show("onion", 2024);

        assertThat(page)
                .contains("Test ten first")
                .contains("keep it damp at 68 °F. Laboratories count for the last time after 10 days")
                .containsPattern("for 10 plants sow \\d\\d seeds meanwhile: they are enough \\d\\d % of the time");
        assertThat(show("tomato", 2027)).doesNotContain("Test ten first");
    }

    private String show(String crop, int year) {
        Answer added =
                member().post("/seeds", lot(Map.of("storage", "shed", "crop", crop, "year", String.valueOf(year))));
        return member().get(added.location()).text();
    }

    @ParameterizedTest
    @CsvSource({"tomatoe, tomato", "capsicum anuum, pepper", "jalepeno, pepper"})
    void a_search_with_a_slip_finds_what_was_meant_and_says_so(String typed, String crop) {
        add(crop, crop.equals("pepper") ? "Early Jalapeño" : "Harbour Light", null);
        add("kale", "Old Blue", null);

        String text = member().get("/seeds?q=" + typed.replace(" ", "+")).text();

        assertThat(text).contains("Nothing is spelled “" + typed + "”").doesNotContain("Old Blue");
        assertThat(text).containsAnyOf("Early Jalapeño", "Harbour Light");
    }

    @Test
    void a_search_for_a_species_finds_its_crops() {
        add("pepper", "Harbour Light", null);

        assertThat(member().get("/seeds?q=capsicum").text())
                .contains("Harbour Light")
                .doesNotContain("Nothing is spelled");
    }

    @Test
    void a_large_doubtful_lot_is_named_as_worth_testing() {
        lots.add(
                new NewLot("leek", "Long Row", 2024, 400, null, false, ""),
                group.member().id());

        assertThat(member().get("/seeds").text())
                .contains("Worth testing before the season")
                .contains("400 seeds.");
    }

    @Test
    void a_test_says_what_it_cannot_say() {
        UUID id = add("pepper", "Harbour Light", group.member().id());
        member().post("/seeds/" + id + "/tests", test("2027-02-20", "10", "8"));

        assertThat(member().get("/seeds/" + id).text()).contains("8 of 10: between about 5 and 9½ in ten");
    }

    @Test
    void seed_given_to_the_group_belongs_to_nobody_in_particular() {
        member().post("/seeds", lot(Map.of("owner", "group")));

        assertThat(member().get("/seeds").text()).contains("The group’s").contains("Not counted");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "crop | unicorn | Crop is not one of those in the list",
                "crop | '' | Crop is not one of those in the list",
                "variety | '' | Variety is empty",
                "year | 2031 | Year of the seed was '2031'; a whole number from 1950 to 2027",
                "year | soon | Year of the seed was 'soon'",
                "seeds | -1 | Seeds left was '-1'; a whole number from 0",
                "owner | thief | Whose it is was 'thief'",
                "source | stolen | Where it came from was 'stolen'",
                "storage | attic | How it is kept was 'attic'",
                "storageTemperature | 140 | Temperature in °F was '140'; a number from -4 to 122 is accepted",
                "storageTemperature | warm | Temperature in °F was 'warm'",
                "storageMoisture | 40 | Seed moisture in % was '40'; a number from 5 to 25 is accepted",
                "storageMoisture | 4 | Seed moisture in % was '4'",
                "storageTemperature | 50 | How it is kept has figures below",
                "storage | own | A measured storage needs both figures"
            })
    void what_cannot_be_used_is_said_beside_its_field_and_the_rest_is_kept(
            String field, String typed, String sentence) {
        Answer answer = member().post("/seeds", lot(Map.of(field, typed, "note", "red tin")));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence).contains("red tin");
        assertThat(lots.list(LotSearch.everything())).isEmpty();
    }

    @Test
    void a_name_that_is_far_too_long_is_refused_with_its_length() {
        Answer answer = member().post("/seeds", lot(Map.of("variety", "x".repeat(100_000))));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Variety has 100,000 characters; at most 80 fit");
    }

    @Test
    void a_name_of_ten_megabytes_is_refused_before_it_is_read() {
        Answer answer = member().post("/seeds", lot(Map.of("variety", "x".repeat(10_000_000))));

        assertThat(answer.status()).isBetween(400, 499);
        assertThat(lots.list(LotSearch.everything())).isEmpty();
    }

    @Test
    void a_name_with_marks_of_a_page_is_shown_as_typed() {
        member().post("/seeds", lot(Map.of("variety", "<b>Bold</b>")));

        assertThat(member().get("/seeds").body())
                .contains("&lt;b&gt;Bold&lt;/b&gt;")
                .doesNotContain("<b>Bold");
    }

    @Test
    void searching_finds_crop_and_variety_in_any_capitals() {
        add("pepper", "Harbour Light", null);
        add("kale", "Old Blue", null);

        assertThat(member().get("/seeds?q=PEPPER").text())
                .contains("Harbour Light")
                .doesNotContain("Old Blue");
        assertThat(member().get("/seeds?q=old+b").text()).contains("Old Blue").doesNotContain("Harbour Light");
        assertThat(member().get("/seeds?q=melon").text()).contains("holds “melon”");
    }

    @Test
    void a_page_number_that_cannot_be_shows_the_first() {
        add("pepper", "Harbour Light", null);

        assertThat(member().get("/seeds?page=-4").text()).contains("Harbour Light");
        assertThat(member().get("/seeds?page=99999999999").text()).contains("Harbour Light");
    }

    @Test
    void the_owner_records_a_test() {
        UUID id = add("pepper", "Harbour Light", group.member().id());

        Answer answer = member().post("/seeds/" + id + "/tests", test("2027-02-20", "20", "17"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(lots.tests(id)).containsExactly(new GerminationTest(LocalDate.of(2027, 2, 20), 17, 20));
        assertThat(member().get("/seeds/" + id).text()).contains("20 Feb 2027");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2027-02-20 | 10 | 11 | Seeds that came up was '11', more than the 10 tested",
                "2027-02-20 | 10 | -1 | Seeds that came up was '-1'",
                "2027-02-20 | 0 | 0 | Seeds tested was '0'",
                "'' | 10 | 8 | Day of the test was ''; a date such as 2027-03-01",
                "2027-03-02 | 10 | 8 | Day of the test was 2027-03-02, which is still to come; a day up to 2027-03-01"
            })
    void a_test_that_cannot_be_is_refused(String day, String seeds, String germinated, String sentence) {
        UUID id = add("pepper", "Harbour Light", group.member().id());

        Answer answer = member().post("/seeds/" + id + "/tests", test(day, seeds, germinated));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("germinated")).isEqualTo(germinated);
        assertThat(lots.tests(id)).isEmpty();
    }

    @Test
    void nobody_else_changes_a_members_lot_but_a_coordinator_may() {
        UUID id = add("pepper", "Harbour Light", group.member().id());
        Browser other = group.signedIn(group.onDuty());
        Browser coordinator = group.signedIn(group.coordinator());

        assertThat(other.post("/seeds/" + id + "/tests", test("2027-02-20", "10", "8"))
                        .status())
                .isEqualTo(403);
        assertThat(other.post("/seeds/" + id + "/count", count("5", 1)).status())
                .isEqualTo(403);
        assertThat(other.get("/seeds/" + id).text()).contains("Only its owner or a coordinator");
        assertThat(coordinator.post("/seeds/" + id + "/count", count("5", 1)).status())
                .isEqualTo(303);
    }

    @Test
    void a_member_cannot_change_the_groups_own_seed() {
        UUID id = add("pepper", "Harbour Light", null);

        assertThat(member().post("/seeds/" + id + "/count", count("5", 1)).status())
                .isEqualTo(403);
    }

    @Test
    void a_correction_made_twice_is_refused_the_second_time() {
        UUID id = add("pepper", "Harbour Light", group.member().id());

        Answer first = member().post("/seeds/" + id + "/count", count("5", 1));
        Answer second = member().post("/seeds/" + id + "/count", count("6", 1));

        assertThat(first.status()).isEqualTo(303);
        assertThat(second.status()).isEqualTo(409);
        assertThat(lots.find(id).orElseThrow().seedsLeft()).isEqualTo(5);
    }

    @Test
    void a_negative_count_is_refused_and_kept_in_its_field() {
        UUID id = add("pepper", "Harbour Light", group.member().id());

        Answer answer = member().post("/seeds/" + id + "/count", count("-5", 1));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.typed("seeds")).isEqualTo("-5");
    }

    @Test
    void treated_seed_carries_its_caution() {
        UUID id = lots.add(
                new NewLot("pepper", "Harbour Light", 2026, null, null, true, ""),
                group.member().id());

        assertThat(member().get("/seeds/" + id).text())
                .contains("Caution: treated seed")
                .contains("Never soak it");
    }

    @Test
    void strangers_see_nothing_and_unknown_lots_are_not_found() {
        assertThat(group.stranger().get("/seeds").location()).startsWith("/sign-in");
        assertThat(group.stranger().postAsIs("/seeds", lot(Map.of())).status()).isEqualTo(401);
        assertThat(member().get("/seeds/" + new UUID(0, 7)).status()).isEqualTo(404);
        assertThat(member().get("/seeds/nonsense").status()).isEqualTo(404);
        assertThat(member().post("/seeds/" + new UUID(0, 7) + "/tests", test("2027-02-20", "10", "8"))
                        .status())
                .isEqualTo(404);
    }

    private Browser member() {
        return group.signedIn(group.member());
    }

    private UUID add(String cropId, String variety, @Nullable UUID owner) {
        return lots.add(
                new NewLot(cropId, variety, 2026, null, owner, false, ""),
                group.member().id());
    }

    private static Map<String, String> lot(Map<String, String> changes) {
        Map<String, String> fields = new HashMap<>(
                Map.of("crop", "pepper", "variety", "Harbour Light", "year", "2025", "seeds", "", "owner", "mine"));
        fields.putAll(changes);
        return fields;
    }

    private static Map<String, String> test(String day, String seeds, String germinated) {
        return Map.of("testedOn", day, "testSeeds", seeds, "germinated", germinated);
    }

    private static Map<String, String> count(String seeds, int version) {
        return Map.of("seeds", seeds, "note", "", "version", String.valueOf(version));
    }
}
