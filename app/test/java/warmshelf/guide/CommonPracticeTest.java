package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Standing;
import warmshelf.words.Units;

/**
 * What is common practice among growers of peppers, and has no source of its own: each is told with that mark. The figures are
 * written out here as growers say them, not taken from the tables.
 */
class CommonPracticeTest {
    @Test
    void common_practice_covers_peppers_a_quarter_of_an_inch_or_six_millimetres() {
        assertCommonPractice(Topic.COVERING, "Peppers in cells", "¼ in", "0.6 cm");
    }

    @Test
    void common_practice_keeps_peppers_at_75_to_80_fahrenheit_or_24_to_27_celsius() {
        assertCommonPractice(Topic.BOTTOM_HEAT, "Warmth for peppers", "75–80 °F", "24–27 °C");
    }

    @Test
    void common_practice_hangs_the_lamp_four_inches_or_ten_centimetres_above_the_leaves() {
        assertThat(Articles.text(Topic.LIGHT, Articles.US)).contains("The group uses about 4 in");
        assertThat(Articles.text(Topic.LIGHT, Articles.METRIC)).contains("The group uses about 10 cm");
    }

    @Test
    void common_practice_waits_one_to_two_weeks_for_peppers_and_a_month_or_two_for_very_hot_ones() {
        String often = "daily from about day 7; most within 1–2 weeks, very hot kinds a month or two";

        assertCommonPractice(Topic.FIRST_LOOK, "How often", often, often);
    }

    @Test
    void common_practice_raises_peppers_at_least_eight_weeks_indoors() {
        Crop pepper = CropCatalogue.bundled().get("pepper");

        assertThat(pepper.weeksIndoorsMin()).isGreaterThanOrEqualTo(8);
        assertThat(facts(Topic.PLANT_OUT, pepper, Articles.US).facts())
                .contains(new CropAtStep.Fact(
                        "Indoors",
                        "%d to %d weeks before planting out"
                                .formatted(pepper.weeksIndoorsMin(), pepper.weeksIndoorsMax())));
    }

    @Test
    void common_practice_moves_sprouted_seed_at_a_root_of_an_eighth_to_a_quarter_inch_or_3_to_6_millimetres() {
        assertCommonPractice(Topic.MOVE_TO_CELLS, "How long a root", "⅛–¼ in", "0.3–0.6 cm");
    }

    @Test
    void common_practice_sows_two_seeds_to_a_cell() {
        assertCommonPractice(Topic.SOW, "Seeds in a cell", "2 seeds", "2 seeds");
    }

    @Test
    void common_practice_feeds_at_half_strength_from_the_first_true_leaves() {
        assertCommonPractice(
                Topic.FIRST_FEED,
                "Share of the label’s strength",
                "half of the label’s strength",
                "half of the label’s strength");
    }

    @Test
    void common_practice_soaks_in_half_household_peroxide_for_five_minutes() {
        String soak = "half household 3 % solution, half water (1.5 %), 5 minutes, then rinse; no source";

        assertCommonPractice(Topic.SOAK, "What is published of peroxide", soak, soak);
    }

    private static void assertCommonPractice(Topic topic, String measure, String inUs, String inMetric) {
        assertThat(Articles.comparison(topic, Articles.US, measure).claims())
                .anySatisfy(claim -> assertMarked(claim, inUs));
        assertThat(Articles.comparison(topic, Articles.METRIC, measure).claims())
                .anySatisfy(claim -> assertMarked(claim, inMetric));
    }

    private static void assertMarked(Claim claim, String says) {
        assertThat(claim.says()).isEqualTo(says);
        assertThat(claim.source().standing()).isEqualTo(Standing.COMMON_PRACTICE);
    }

    private static CropAtStep facts(Topic topic, Crop crop, Units units) {
        return CropAtStep.of(topic, crop, CropCatalogue.bundled().responseOf(crop), units);
    }
}
