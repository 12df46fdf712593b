package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PostcodesTest {
    private static final Postcodes POSTCODES = Postcodes.bundled();

    @Test
    void a_postcode_leads_to_its_place() {
        assertThat(POSTCODES.find("US", "55812"))
                .contains(new PostcodePlace("US", "55812", "Duluth", "MN", 46.809, -92.072, 170));
    }

    @ParameterizedTest
    @ValueSource(strings = {" 55812 ", "55812-1234", "55812 1234", "558121234"})
    void spaces_and_the_four_extra_digits_do_not_matter(String typed) {
        assertThat(POSTCODES.find("us", typed))
                .get()
                .extracting(PostcodePlace::code)
                .isEqualTo("55812");
    }

    @ParameterizedTest
    @CsvSource({"US,''", "US,5581", "US,00000", "US,99999", "US,postcode", "CA,55812", "'',55812"})
    void what_is_not_in_the_table_is_not_found(String country, String code) {
        assertThat(POSTCODES.find(country, code)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "2139, 02139, the leading zero was dropped",
        "55821, 55811, one digit is wrong",
        "55O12, 55012, a letter for a digit",
        "5581, 55811, one digit is missing",
        "558112, 55812, one digit too many",
        "05512, 05152, two digits changed places",
        "55899-1234, 55599, one digit is wrong and four are extra"
    })
    void similar_codes_exist_and_include_the_one_meant(String typed, String meant, String slip) {
        assertThat(POSTCODES.similarTo(typed))
                .as(slip)
                .hasSizeLessThanOrEqualTo(6)
                .allSatisfy(
                        place -> assertThat(POSTCODES.find("US", place.code())).contains(place))
                .extracting(PostcodePlace::code)
                .contains(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "postcode", "K1A 0B1 in Ottawa", "12345678901234567890123456789012345678901234567890"})
    void nonsense_has_nothing_similar_or_only_real_codes(String typed) {
        assertThat(POSTCODES.similarTo(typed))
                .allSatisfy(place -> assertThat(place.code()).hasSize(5));
    }

    @Test
    void the_table_is_sorted_as_the_search_needs_it() {
        SortedRows rows = SortedRows.of("us-postcodes.csv");

        assertThat(rows.size()).isEqualTo(42_423);
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.row(i)[0]).isGreaterThan(rows.row(i - 1)[0]);
            assertThat(rows.row(i)).hasSize(7);
        }
    }
}
