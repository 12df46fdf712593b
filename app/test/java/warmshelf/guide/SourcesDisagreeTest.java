package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.TemperatureResponse;
import warmshelf.words.Units;

/** Where sources disagree the page says so, with the range; ranges are written out here by hand from the rows. */
class SourcesDisagreeTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            LIGHT       | From lamp to leaves                        | Sources disagree: 1 to 12 in, by the kind of lamp and by source. | Sources disagree: 2.5 to 30 cm, by the kind of lamp and by source.
            LIGHT       | Hours a day                                | Sources disagree: 14 to 16 hours a day. All of them allow 16. | Sources disagree: 14 to 16 hours a day. All of them allow 16.
            COVERING    | Depth against the seed’s size              | Sources disagree: 2 to 5 times its thickness or width. All of them allow 3. | Sources disagree: 2 to 5 times its thickness or width. All of them allow 3.
            BOTTOM_HEAT | Warmth for seed that likes it warm         | Sources disagree: 70 to 90 °F, by crop. | Sources disagree: 21 to 32 °C, by crop.
            BOTTOM_HEAT | Warmth for peppers                         | Sources disagree: 75 to 90 °F. | Sources disagree: 24 to 32 °C.
            HARDEN_OFF  | How long                                   | Sources disagree: 3 to 14 days. All of them allow 7. | Sources disagree: 3 to 14 days. All of them allow 7.
            SOW         | Outside width of a standard tray           | Sources disagree: 9.5 to 10.5 in, by maker. | Sources disagree: 24.1 to 26.7 cm, by maker.
            """)
    void with_the_range_in_the_readers_units(Topic topic, String measure, String inUs, String inMetric) {
        assertThat(Articles.comparison(topic, Articles.US, measure).verdict()).isEqualTo(inUs);
        assertThat(Articles.comparison(topic, Articles.METRIC, measure).verdict())
                .isEqualTo(inMetric);
    }

    @Test
    void of_peroxide_the_thin_evidence_and_the_harm_are_told_and_nobody_is_asked_to_use_it() {
        assertThat(Articles.text(Topic.SOAK, Articles.METRIC))
                .contains("optional, and doubtful", "asks nobody to do it", "The evidence is thin")
                .contains("16 seeds a dose", "1 shoot from 129 seeds", "twice as often")
                .contains("can injure the seedling inside the seed", "roots were burnt where solution stayed")
                .contains("Untreated seed only", "never a stronger grade", "poison centre", "own bottle");
    }

    @Test
    void the_peroxide_mixes_are_reckoned_right() {
        // One part of 3 % in ten parts is 0.3 %; half and half is 1.5 %; 0.7 % by volume of 3 % is 0.021 %.
        assertThat(Articles.text(Topic.SOAK, Articles.US))
                .contains("makes 0.3 %", "(1.5 %)", "0.021–0.3 % peroxide", "0.9 % peroxide");
    }

    @Test
    void a_days_light_is_reckoned_as_the_table_works_it_out() {
        assertThat(200 * 16 * 0.0036).isCloseTo(11.5, within(0.05));
        assertThat(Articles.text(Topic.LIGHT, Articles.US)).contains("200 × 16 hours × 0.0036 = 11.5 mol/m² a day");
    }

    @Test
    void the_example_of_covering_is_reckoned_from_the_rules() {
        assertThat(Articles.text(Topic.COVERING, Articles.METRIC))
                .contains("a seed 0.3 cm thick lies 0.9 cm deep; the rules together allow 0.6–1.5 cm");
        assertThat(Articles.text(Topic.COVERING, Articles.US))
                .contains("a seed ⅛ in thick lies ⅜ in deep; the rules together allow ¼–⅝ in");
    }

    @Test
    void the_example_of_feed_halves_the_label() {
        assertThat(Articles.text(Topic.FIRST_FEED, Articles.METRIC))
                .contains("10 ml to a litre, take 5 ml to a litre (a quarter strength: 2.5 ml)")
                .contains("100 ppm of nitrogen, which is 0.5 g of the powder to a litre");
        assertThat(Articles.text(Topic.FIRST_FEED, Articles.US))
                .contains("2 teaspoons to a gallon, take 1 teaspoon")
                .contains("100 ppm of nitrogen, which is 1.9 g of the powder to a gallon");
    }

    @Test
    void peppers_came_up_as_fast_at_25_as_at_30_degrees_as_the_page_says() {
        TemperatureResponse pepper =
                CropCatalogue.bundled().responseOf(CropCatalogue.bundled().get("pepper"));

        assertThat(pepper.at(25).orElseThrow().days())
                .isEqualTo(pepper.at(30).orElseThrow().days());
        assertThat(Articles.text(Topic.BOTTOM_HEAT, Units.of("C", "in")))
                .contains("peppers came up as fast at 25 °C as at 30 °C");
    }

    @Test
    void cells_and_trays_are_told_in_ounces_and_quarts_or_millilitres_and_litres() {
        // 45 ml are 1.5 US fluid ounces of 29.57 ml; 3.2 litres are 3.4 US quarts of 0.946 litres.
        assertThat(Articles.text(Topic.SOW, Articles.US)).contains("72 cells: 1.5 fl oz a cell, 3.4 quarts a tray");
        assertThat(Articles.text(Topic.SOW, Articles.METRIC)).contains("72 cells: 45 ml a cell, 3.2 litres a tray");
    }
}
