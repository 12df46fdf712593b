package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import warmshelf.frost.FrostPage.Fact;
import warmshelf.frost.FrostPage.Risk;
import warmshelf.frost.FrostPage.View;

class FrostPageTest {
    @Test
    void it_shows_both_dates_at_each_of_three_risks() {
        FrostClimate climate = FrostClimates.at(46.75, -92.25, 238);

        View view = View.of(climate, 2027);

        assertThat(view.risks()).extracting(Risk::percent).containsExactly(50, 30, 10);
        assertThat(view.risks().get(0).spring()).isEqualTo(LocalDate.of(2027, 5, 18));
        assertThat(view.risks().get(2).autumn())
                .isEqualTo(climate.firstAutumnFrost(0.1, 2027).orElseThrow());
    }

    @Test
    void one_plain_sentence_says_what_the_safe_day_means() {
        // median day 138.1 and spread sqrt(12.4^2 + 7.6^2) = 14.54: one in ten after day 138.1 + 1.2816 x 14.54 = 156.7
        assertThat(View.of(FrostClimates.at(46.75, -92.25, 238), 2027).springSentence())
                .isEqualTo("After 6 June only one spring in ten still has a frost here.");
    }

    @Test
    void where_frost_is_too_rare_for_a_date_the_row_has_none() {
        View view = View.of(FrostClimates.at(26.75, -82.25, 3), 2027);

        assertThat(view.risks().get(0).spring()).isNull();
        assertThat(view.risks().get(2).spring()).isNotNull();
    }

    @Test
    void it_says_what_the_dates_rest_on_with_the_adjustment_and_the_scatter() {
        View view = View.of(FrostClimates.at(46.75, -92.25, 238), 2027);

        assertThat(view.facts())
                .contains(
                        new Fact("Elevation those dates hold for", "338 m (1,109 ft)", ""),
                        new Fact("Dates moved for this elevation by", "2.6 days earlier", "3.1 days later"),
                        new Fact("Scatter from year to year", "± 12.4 days", "± 9.6 days"),
                        new Fact("Scatter between stations nearby", "± 7.6 days", "± 4.5 days"));
        assertThat(view.caution()).contains("frost pocket");
    }

    @Test
    void an_unknown_place_has_no_dates_but_offers() {
        FrostPage page = FrostPage.of(FrostForm.of(Map.of("postcode", List.of("5581")), "US", "55811"), 2027);

        assertThat(page.view()).isNull();
        assertThat(page.similar()).isNotEmpty();
    }
}
