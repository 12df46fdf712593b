package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.crop.Crop;
import warmshelf.frost.FirstFrost;
import warmshelf.frost.FrostSeason;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.evidence.ThresholdShift;
import warmshelf.frost.station.MonthlyFrost;
import warmshelf.frost.station.Side;
import warmshelf.testing.Crops;
import warmshelf.testing.Everything;
import warmshelf.words.Units;

/**
 * Stations as NOAA/NCEI's 1981-2010 US Climate Normals give them (public domain), first frost at 32 °F: at International
 * Falls, Minnesota, half of the autumns before 16 September and nine in ten before 28 September; at Duluth 27 September and
 * 9 October; at Albany, New York, 10 and 23 October. Last frost at International Falls half of the springs after 28 May, nine
 * in ten after 9 May. Days to maturity are those of state university extensions, named in the crop table.
 */
class HarvestOutlookTest {
    private static final double NINE_TENTHS = 1.2816;
    private static final int EVERY = 50;
    private static final FrostDates INTERNATIONAL_FALLS = new FrostDates(
            LocalDate.of(2027, 5, 28),
            LocalDate.of(2027, 6, 16),
            LocalDate.of(2027, 9, 4),
            autumn(LocalDate.of(2027, 9, 16), LocalDate.of(2027, 9, 28), 1));

    @ParameterizedTest
    @CsvSource({"09-16, 09-28", "09-27, 10-09", "10-10, 10-23"})
    void the_chance_is_the_published_one_on_the_published_days(String half, String nineTenths) {
        LocalDate median = LocalDate.parse("2027-" + half);
        LocalDate late = LocalDate.parse("2027-" + nineTenths);
        FirstFrost frost = autumn(median, late, 1).at(0);

        assertThat(frost.chanceLaterThan(median)).isCloseTo(0.5, within(0.001));
        assertThat(frost.chanceLaterThan(late)).isCloseTo(0.1, within(0.001));
        assertThat(frost.usual()).contains(median);
    }

    /**
     * Out on 16 June at the accepted risk. Ripe from 25 August (pepper, 70 to 80 days), 9 September (watermelon, 85 to 100),
     * 14 September (very hot pepper, 90 to 120), 14 October (sweet potato, 120 to 150; its quickest kinds, 90 to 100, from 14
     * September); the first frost is usual on 16
     * September.
     */
    @ParameterizedTest
    @CsvSource({
        "pepper, IN_TIME, nearly every year",
        "watermelon, TIGHT, in 7 of 10 years",
        "pepper-very-hot, TIGHT, in 5 of 10 years",
        "sweet-potato, TIGHT, raised from slips"
    })
    void both_ends_of_the_season_are_weighed_with_their_figures(String id, Verdict verdict, String words) {
        Timeline timeline = Asked.of(Crops.of(id), 26, INTERNATIONAL_FALLS).answered();

        assertThat(timeline.verdict()).isEqualTo(verdict);
        assertThat(String.join(" ", timeline.noteWords(Units.METRIC))).contains(words);
    }

    /** A verdict of 'tight' beside 'in 9 of 10 years' would be a contradiction: nine are what 'in time' asks for. */
    @Test
    void the_words_never_tell_more_years_than_the_verdict_goes_by() {
        LocalDate first = LocalDate.of(2027, 9, 14);
        HarvestOutlook almost = new HarvestOutlook(
                first,
                first.plusDays(20),
                OptionalDouble.of(0.897),
                OptionalDouble.of(0.699),
                HarvestOutlook.Reach.TIGHT,
                HarvestOutlook.Ending.FROST_KILLS);
        HarvestOutlook enough = new HarvestOutlook(
                first,
                first.plusDays(20),
                OptionalDouble.of(0.9),
                OptionalDouble.of(0.7),
                HarvestOutlook.Reach.SURE,
                HarvestOutlook.Ending.FROST_KILLS);

        assertThat(almost.sentence()).contains("in 8 of 10 years").contains("in 6 of 10 years");
        assertThat(enough.sentence()).contains("in 9 of 10 years").contains("in 7 of 10 years");
    }

    @Test
    void where_only_the_quickest_kinds_ripen_both_figures_are_told() {
        LocalDate june = LocalDate.of(2027, 6, 20);

        List<String> notes = Asked.of(Crops.TOMATO, 26, INTERNATIONAL_FALLS)
                .on(june)
                .answered()
                .noteWords(Units.METRIC);

        assertThat(notes.get(0))
                .startsWith("Only the quickest kinds: about 45 to 60 days from planting out. The first harvest, from");
        assertThat(notes.get(1))
                .isEqualTo("The usual kinds come too late: their first harvest is due on 3 October,"
                        + " in time in hardly any year.");
    }

    @Test
    void half_of_the_harvest_counts_as_well_as_the_first_of_it() {
        HarvestOutlook hot = Asked.of(Crops.HOT_PEPPER, 26, INTERNATIONAL_FALLS)
                .answered()
                .harvest()
                .orElseThrow();

        assertThat(hot.first()).isEqualTo(LocalDate.of(2027, 9, 14));
        assertThat(hot.half()).isEqualTo(LocalDate.of(2027, 9, 29));
        assertThat(hot.sentence())
                .isEqualTo("The first harvest, from 14 September, comes before a frost that kills it in 5 of 10 years,"
                        + " half of the harvest, by 29 September, in hardly any year.");
    }

    @Test
    void hardy_crops_are_judged_by_the_frost_they_do_not_bear() {
        KillingFrost tender = KillingFrost.of(INTERNATIONAL_FALLS, Crops.TOMATO).orElseThrow();
        KillingFrost half =
                KillingFrost.of(INTERNATIONAL_FALLS, Crops.of("celery")).orElseThrow();
        KillingFrost hardy = KillingFrost.of(INTERNATIONAL_FALLS, Crops.KALE).orElseThrow();
        LocalDate day = LocalDate.of(2027, 9, 24);

        assertThat(tender.chanceLaterThan(day).orElseThrow()).isLessThan(0.25);
        assertThat(half.chanceLaterThan(day).orElseThrow()).isBetween(0.3, 0.7);
        assertThat(hardy.chanceLaterThan(day).orElseThrow()).isGreaterThan(0.75);
    }

    @Test
    void kale_sown_in_summer_is_in_time_where_a_tender_crop_as_quick_is_not() {
        Crop kale = Crops.KALE;
        LocalDate out = LocalDate.of(2027, 8, 4);

        HarvestOutlook borne = outlook(kale, INTERNATIONAL_FALLS, out);
        HarvestOutlook killed = HarvestOutlook.of(
                kale.maturity().orElseThrow(),
                0,
                KillingFrost.of(INTERNATIONAL_FALLS, Crops.TOMATO).orElseThrow(),
                out,
                out);

        assertThat(borne.reach()).isEqualTo(HarvestOutlook.Reach.SURE);
        assertThat(killed.reach()).isNotEqualTo(HarvestOutlook.Reach.SURE);
    }

    @Test
    void where_few_autumns_have_any_frost_the_chance_says_so() {
        FrostDates warm =
                new FrostDates(null, null, null, autumn(LocalDate.of(2027, 12, 20), LocalDate.of(2028, 1, 10), 0.2));

        HarvestOutlook late = outlook(Crops.TOMATO, warm, LocalDate.of(2027, 12, 25));

        assertThat(late.chanceFirst().orElseThrow()).isBetween(0.8, 0.81);
        assertThat(KillingFrost.of(warm, Crops.TOMATO).orElseThrow().usual()).isNull();
    }

    @Test
    void in_the_south_the_autumn_is_that_of_the_next_year() {
        FrostDates south = new FrostDates(
                LocalDate.of(2027, 9, 20),
                LocalDate.of(2027, 10, 12),
                LocalDate.of(2028, 4, 20),
                autumn(LocalDate.of(2028, 5, 5), LocalDate.of(2028, 5, 20), 1));

        Timeline pepper =
                Asked.of(Crops.PEPPER, 26, south).on(LocalDate.of(2027, 7, 1)).answered();

        assertThat(pepper.verdict()).isEqualTo(Verdict.IN_TIME);
        assertThat(outlook(Crops.PEPPER, south, LocalDate.of(2028, 2, 25)).chanceFirst())
                .hasValueCloseTo(0.5, within(0.01));
    }

    @Test
    void once_planted_too_late_it_is_said_with_the_figure() {
        Timeline timeline = Asked.of(Crops.TOMATO, 26, INTERNATIONAL_FALLS)
                .on(LocalDate.of(2027, 8, 6))
                .having(new Seen(
                        null,
                        null,
                        LocalDate.of(2027, 5, 20),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        LocalDate.of(2027, 8, 5)))
                .answered();

        assertThat(timeline.verdict()).isEqualTo(Verdict.TOO_LATE);
        assertThat(timeline.noteWords(Units.METRIC)).anyMatch(note -> note.contains("in hardly any year"));
    }

    /**
     * Nights of other temperatures are taken to come evenly as autumn cools: against the dates that twelve monthly mean minima
     * tell for the same temperatures, at one station in fifty of the normals.
     */
    @ParameterizedTest
    @CsvSource({"-3.3, 2, 5", "-3.9, 2.5, 6", "-4.4, 2.5, 7", "-6.7, 5, 12"})
    void colder_nights_are_told_to_within_some_days(double celsius, double half, double nineTenths) throws IOException {
        Path file = Everything.reference("monthly-minima-noaa.csv");
        Everything.require(Files.exists(file), "monthly-minima-noaa.csv");
        List<Double> off = new ArrayList<>();
        List<String> lines = Files.readAllLines(file);
        for (int row = 1; row < lines.size(); row += EVERY) {
            String[] cells = lines.get(row).split(",", -1);
            double[] means = Arrays.stream(cells, cells.length - 12, cells.length)
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            MonthlyFrost atZero = MonthlyFrost.of(means, false, 0);
            OptionalDouble frost = atZero.firstAutumnFrost(0.5);
            OptionalDouble colder = MonthlyFrost.of(means, false, celsius).firstAutumnFrost(0.5);
            OptionalDouble sd = atZero.autumnSd();
            if (atZero.anyAutumnFrost() > 0.99 && frost.isPresent() && colder.isPresent() && sd.isPresent()) {
                double apart = ThresholdShift.days(Side.AUTUMN, Threshold.KILLING, sd.getAsDouble());
                off.add(frost.getAsDouble() + celsius / Threshold.KILLING.celsius() * apart - colder.getAsDouble());
            }
        }
        List<Double> sorted = off.stream().map(Math::abs).sorted().toList();

        assertThat(sorted).hasSizeGreaterThan(55);
        assertThat(sorted.get(sorted.size() / 2)).isLessThan(half);
        assertThat(sorted.get(sorted.size() * 9 / 10)).isLessThan(nineTenths);
    }

    private static HarvestOutlook outlook(Crop crop, FrostDates dates, LocalDate out) {
        return HarvestOutlook.of(
                crop.maturity().orElseThrow(), 0, KillingFrost.of(dates, crop).orElseThrow(), out, out);
    }

    /** An autumn of 2027 by the days before which half and nine in ten of those with any frost have had it. */
    private static AutumnFrosts autumn(LocalDate half, LocalDate nineTenths, double any) {
        double median = YearDay.number(half, 2027);
        double sd = (YearDay.number(nineTenths, 2027) - median) / NINE_TENTHS;
        FrostSeason frost = new FrostSeason(any, median, 0, 0, sd, 0, 0);
        return new AutumnFrosts(
                new FirstFrost(frost, 2027),
                new FirstFrost(ThresholdShift.moved(Side.AUTUMN, Threshold.KILLING, frost), 2027));
    }
}
