package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Hardiness;
import warmshelf.frost.FrostPage.Cold;
import warmshelf.frost.FrostPage.Fact;
import warmshelf.frost.FrostPage.Plants;
import warmshelf.frost.FrostPage.Risk;
import warmshelf.frost.FrostPage.Source;
import warmshelf.frost.FrostPage.View;
import warmshelf.frost.evidence.GardenFrost;
import warmshelf.frost.evidence.Gardens;
import warmshelf.frost.evidence.GroupEvidence;
import warmshelf.words.Units;

class FrostPageTest {
    private static final Units FEET = Units.AMERICAN;

    @Test
    void it_shows_both_dates_at_each_of_three_risks() {
        FrostClimate climate = FrostClimates.at(46.75, -92.25, 238);

        View view = view(46.75, -92.25, 238);

        assertThat(view.risks()).extracting(Risk::percent).containsExactly(50, 30, 10);
        assertThat(view.risks().get(0).spring()).isEqualTo(LocalDate.of(2027, 5, 18));
        assertThat(view.risks().get(2).autumn())
                .isEqualTo(climate.firstAutumnFrost(0.1, 2027).orElseThrow());
    }

    @Test
    void one_plain_sentence_says_what_the_safe_day_means_and_another_how_sure_it_is() {
        // median day 138.1 and spread sqrt(12.4^2 + 7.6^2) = 14.54: one in ten after day 138.1 + 1.2816 x 14.54 = 156.7
        View view = view(46.75, -92.25, 238);

        assertThat(view.springSentence()).isEqualTo("After 6 June only one spring in ten still had a frost here.");
        // 1.645 x 7.6 = 12.5
        assertThat(view.sureSentence()).contains("up to 13 days earlier or later (nine chances in ten)");
    }

    @Test
    void where_frost_is_too_rare_for_a_date_the_row_has_none() {
        View view = view(26.75, -82.25, 3);

        assertThat(view.risks().get(0).spring()).isNull();
        assertThat(view.risks().get(2).spring()).isNotNull();
    }

    @Test
    void it_says_what_was_done_with_the_adjustment_and_the_scatter() {
        View view = view(46.75, -92.25, 238);

        assertThat(view.facts())
                .contains(
                        new Fact("Height that the grid’s dates hold for", "1,109 ft", ""),
                        new Fact("Dates moved for this height by", "2.6 days earlier", "3.1 days later"),
                        new Fact("Scatter from year to year", "± 12.4 days", "± 9.6 days"),
                        new Fact("Scatter between places near each other", "± 7.6 days", "± 4.5 days"));
        assertThat(view.caution()).contains("frost pocket");
    }

    @Test
    void killing_frost_ends_earlier_and_light_frost_later_than_plain_frost() {
        List<Cold> colds = view(46.75, -92.25, 238).colds();

        assertThat(colds).extracting(Cold::celsius).containsExactly(2.2, 0.0, -2.2);
        assertThat(colds).extracting(cold -> cold.average().spring()).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(colds).extracting(cold -> cold.average().autumn()).isSorted();
    }

    @Test
    void each_class_of_plants_has_its_day_at_the_risk_the_reader_accepts_for_it() {
        Map<Hardiness, Double> accepted = Map.of(Hardiness.TENDER, 0.3);
        FrostClimate climate = FrostClimates.at(46.75, -92.25, 238);

        View view = view(at(46.75, -92.25, 238), accepted);

        Plants tender = plants(view, Hardiness.TENDER);
        assertThat(tender.percent()).isEqualTo(30);
        assertThat(tender.usual()).isFalse();
        assertThat(tender.spring()).isEqualTo(climate.lastSpringFrost(0.3, 2027).orElseThrow());
        assertThat(plants(view, Hardiness.VERY_TENDER).percent()).isEqualTo(10);
        assertThat(plants(view, Hardiness.HARDY).usual()).isTrue();
    }

    @Test
    void the_grid_stands_among_the_evidence_with_its_own_dates_and_what_was_done_to_them() {
        Source grid = view(46.75, -92.25, 238).sources().get(0);

        // 140.7 is 21 May, before the 2.6 days for a hundred metres less
        assertThat(grid.spring()).isEqualTo(LocalDate.of(2027, 5, 21));
        assertThat(grid.moved()).isEqualTo("2.6 days earlier");
        assertThat(grid.share()).isEqualTo(100);
    }

    private static Plants plants(View view, Hardiness hardiness) {
        return view.plants().stream()
                .filter(row -> row.hardiness().equals(hardiness.words()))
                .findFirst()
                .orElseThrow();
    }

    private static View view(double latitude, double longitude, double elevation) {
        return view(at(latitude, longitude, elevation), Map.of());
    }

    private static View view(Function<Threshold, FrostClimate> at, Map<Hardiness, Double> accepted) {
        return Objects.requireNonNull(FrostPage.of(at, 2027, accepted, FEET).view());
    }

    private static Function<Threshold, FrostClimate> at(double latitude, double longitude, double elevation) {
        return threshold -> GardenFrost.of(Gardens.at(latitude, longitude, elevation), GroupEvidence.none(), threshold)
                .orElseThrow();
    }
}
