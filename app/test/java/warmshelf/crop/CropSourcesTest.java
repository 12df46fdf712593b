package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.ReferenceTable;
import warmshelf.testing.Crops;

/** The second reading of the crops, db/reference/crop-sources.csv; each row names the page and quotes it. */
class CropSourcesTest {
    // Of the others one page or none could be read; a page that is added raises these.
    private static final Map<SourceMatter, Long> AT_LEAST = Map.of(
            SourceMatter.WEEKS_INDOORS, 52L,
            SourceMatter.PLANTING_OUT, 41L,
            SourceMatter.DEPTH, 11L,
            SourceMatter.LIGHT, 5L,
            SourceMatter.HARDINESS, 61L);
    private static final LocalDate READ = LocalDate.of(2026, 11, 30);

    private static SourceStatement weeks(@Nullable Double low, @Nullable Double high, String publisher) {
        return new SourceStatement(
                "tomato", SourceMatter.WEEKS_INDOORS, low, high, false, "", "a page", "https://a", publisher, READ);
    }

    private static SourcedRange tomato(SourceStatement... statements) {
        return new CropSources(List.of(statements)).of(Crops.TOMATO, SourceMatter.WEEKS_INDOORS);
    }

    @Test
    void the_range_runs_from_the_least_to_the_most_that_any_source_says() {
        SourcedRange range = tomato(weeks(5.0, 7.0, "Iowa"), weeks(6.0, 8.0, "Utah"));

        assertThat(List.of(range.low(), range.high())).containsExactly(5.0, 8.0);
        assertThat(range.publishers()).isEqualTo(2);
    }

    @Test
    void two_pages_of_one_publisher_are_one_source() {
        assertThat(tomato(weeks(5.0, 7.0, "Iowa"), weeks(6.0, 6.0, "Iowa")).publishers())
                .isEqualTo(1);
    }

    // The tomato has 5 to 7 weeks.
    @Test
    void sources_differ_where_one_goes_beyond_the_crops_own_figure_and_only_there() {
        assertThat(tomato(weeks(5.0, 6.0, "Iowa"), weeks(6.0, 7.0, "Utah")).differs())
                .isFalse();
        assertThat(tomato(weeks(5.0, 8.0, "Iowa")).differs()).isTrue();
        assertThat(tomato(weeks(4.0, 7.0, "Iowa")).differs()).isTrue();
        assertThat(tomato().differs()).isFalse();
    }

    @Test
    void a_publisher_is_against_the_crop_only_where_all_that_it_says_leaves_the_crops_figure_out() {
        assertThat(tomato(weeks(8.0, 9.0, "Penn State"), weeks(7.0, 8.0, "Utah"))
                        .against())
                .containsExactly("Penn State");
        assertThat(tomato(weeks(8.0, 9.0, "Penn State"), weeks(6.0, 8.0, "Penn State"))
                        .against())
                .isEmpty();
    }

    @Test
    void an_end_that_a_source_leaves_open_is_never_outside() {
        assertThat(tomato(weeks(6.0, null, "Kansas")).against()).isEmpty();
        assertThat(tomato(weeks(8.0, null, "Kansas")).against()).containsExactly("Kansas");
        assertThat(tomato(weeks(null, 4.0, "Kansas")).against()).containsExactly("Kansas");
        assertThat(tomato(weeks(null, 4.0, "Kansas")).low()).isEqualTo(4);
    }

    // University of Maine: peppers 7 to 10 weeks before the danger of the last frost has passed; they go out a week
    // after it.
    @Test
    void weeks_counted_to_the_last_frost_are_told_to_planting_out() {
        assertThat(CropSources.bundled()
                        .of(Crops.PEPPER, SourceMatter.WEEKS_INDOORS)
                        .statements())
                .filteredOn(said -> said.quote().contains("danger of the last frost"))
                .singleElement()
                .satisfies(
                        said -> assertThat(List.of(said.least(), said.most())).containsExactly(8.0, 11.0));
    }

    @Test
    void each_row_is_of_a_crop_that_there_is_and_names_page_publisher_and_words() {
        Set<String> crops = CropCatalogue.bundled().all().stream().map(Crop::id).collect(Collectors.toSet());

        assertThat(ReferenceTable.rows("crop-sources.csv").stream().map(SourceStatement::of))
                .hasSizeGreaterThan(600)
                .allSatisfy(said -> {
                    assertThat(crops).contains(said.cropId());
                    assertThat(said.address()).startsWith("http");
                    assertThat(said.publisher()).isNotEmpty();
                    assertThat(said.quote()).isNotEmpty().hasSizeLessThan(120);
                    assertThat(said.least()).isLessThanOrEqualTo(said.most());
                });
        assertThat(ReferenceTable.rows("crop-sources.csv").stream()
                        .map(row -> row.get("unit"))
                        .distinct())
                .containsOnly("weeks", "weeks-before-last-frost", "days", "in", "cover", "class");
    }

    @Test
    void no_row_stands_twice() {
        assertThat(ReferenceTable.rows("crop-sources.csv").stream().map(SourceStatement::of))
                .doesNotHaveDuplicates();
    }

    @Test
    void master_gardeners_speak_for_the_service_that_trains_them() {
        assertThat(ReferenceTable.rows("crop-sources.csv").stream().map(row -> row.get("publisher")))
                .noneMatch(publisher -> publisher.contains("Master Gardener"));
    }

    @Test
    void what_no_table_knows_is_not_read() {
        assertThatThrownBy(() -> SourceMatter.named("colour")).hasMessageContaining("colour");
        assertThatThrownBy(() -> SeedCover.named("deep")).hasMessageContaining("deep");
    }

    // The figures that most publishers contradict; why each stands all the same is said beside it.
    @Test
    void no_figure_stands_against_all_its_sources_but_those_named_here() {
        Map<String, List<String>> alone = CropCatalogue.bundled().all().stream()
                .flatMap(crop -> List.of(SourceMatter.values()).stream()
                        .map(matter -> CropSources.bundled().of(crop, matter)))
                .filter(range -> !range.isEmpty() && range.against().size() == range.publishers())
                .collect(Collectors.toMap(
                        range -> "%s %s"
                                .formatted(
                                        range.crop().id(), range.matter().name().toLowerCase(Locale.ROOT)),
                        SourcedRange::against));

        assertThat(alone)
                // An inch in the garden; half an inch in a tray, as California has it for squash.
                // Utah has young plants out in the cold, so that they bud in their first year; no second page does.
                .containsEntry("artichoke planting_out", List.of("Utah State University Extension"))
                .containsEntry("artichoke hardiness", List.of("Utah State University Extension"))
                // Four weeks in North Dakota, and no second page; ours are common practice.
                .containsEntry("calendula weeks_indoors", List.of("North Dakota State University Extension"))
                .containsEntry("winter-squash depth", List.of("University of Maine Cooperative Extension"))
                .hasSize(4);
    }

    @Test
    void how_many_crops_have_two_independent_sources_for_each_matter_is_counted() {
        Map<SourceMatter, Long> two = new EnumMap<>(SourceMatter.class);
        for (SourceMatter matter : SourceMatter.values()) {
            two.put(
                    matter,
                    CropCatalogue.bundled().all().stream()
                            .filter(crop ->
                                    CropSources.bundled().of(crop, matter).publishers() >= 2)
                            .count());
        }

        System.out.println("crops of 77 with two independent sources or more: " + two);
        assertThat(two)
                .allSatisfy((matter, crops) ->
                        assertThat(crops).as(matter.name()).isGreaterThanOrEqualTo(AT_LEAST.get(matter)));
    }
}
