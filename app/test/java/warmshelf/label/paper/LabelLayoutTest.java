package warmshelf.label.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LabelLayoutTest {
    private static final String EIGHTY =
            "Bundesgartenschau Zuckererbse Zwergsortenmischung Überraschungspackung 2027 Aus";
    private static final String EIGHTY_IN_ONE =
            "Bundesgartenschauzuckererbsenzwergsortenmischungsueberraschungspackungzwanzig27";

    static List<LabelStock> everyStock() {
        return StockTable.all();
    }

    @ParameterizedTest
    @MethodSource("everyStock")
    void nothing_reaches_beyond_the_label_whatever_the_names(LabelStock stock) {
        for (String variety : List.of("Roma", "Lantern Row Early", EIGHTY, EIGHTY_IN_ONE, "मिर्च काली", "王小明的辣椒")) {
            LabelDrawing label = drawn(stock, SampleLabels.of("K7P 4MX", SampleLabels.ADDRESS, variety, "שרה כהן"))
                    .orElseThrow();

            double from = label.qr() == null ? 0 : label.qr().side();
            assertThat(label.written()).isNotEmpty().allSatisfy(text -> {
                assertThat(text.x()).isGreaterThanOrEqualTo(from);
                double wide = Lettering.bundled().width(text.text(), text.bold()) * text.size();
                assertThat(text.x() + wide).as(text.text()).isLessThanOrEqualTo(stock.along());
                assertThat(text.baseline() - 0.75 * text.size()).isPositive();
                assertThat(text.baseline()).isLessThan(stock.across());
            });
            assertThat(words(label)).contains("K7P 4MX");
        }
    }

    @Test
    void a_stick_says_everything() {
        LabelDrawing label = drawn(StockTable.find("stick-5in").orElseThrow(), SampleLabels.full())
                .orElseThrow();

        assertThat(words(label))
                .containsExactly(
                        "K7P 4MX",
                        "Lantern Row Early",
                        " · ",
                        "Pepper, sweet and mild hot",
                        "trial 3 way B",
                        " · ",
                        "Tom",
                        " · ",
                        "sown 2 Mar 2027",
                        " · ",
                        "lot 2026");
        assertThat(label.leftOut()).isEmpty();
    }

    @Test
    void where_room_is_short_what_tells_apart_stays_and_the_rest_is_told_to_be_left_out() {
        LabelDrawing label = drawn(LabelStock.single("x", LabelMedium.ROLL, "x", 30, 11.5, 0), SampleLabels.full())
                .orElseThrow();

        assertThat(label.qr()).isNotNull();
        assertThat(words(label)).contains("K7P 4MX", "Early");
        assertThat(label.leftOut()).contains(LabelPart.Kind.LOT).doesNotContain(LabelPart.Kind.VARIETY);
    }

    /** What a scanner reads: ISO/IEC 18004 asks for a quiet zone of four modules; 0.33 mm a module is 13 mil, common practice. */
    @ParameterizedTest
    @CsvSource({"11.0, true", "10.8, false", "16, true", "25.4, true"})
    void a_qr_code_stands_only_where_it_can_be_read(double height, boolean printed) {
        LabelDrawing label = drawn(LabelStock.single("x", LabelMedium.ROLL, "x", 60, height, 0), SampleLabels.full())
                .orElseThrow();

        assertThat(label.qr() != null).isEqualTo(printed);
        if (label.qr() != null) {
            assertThat(label.qr().module()).isBetween(0.33, 0.6);
            assertThat(label.qr().side()).isLessThanOrEqualTo(height);
            assertThat(label.qr().side() / label.qr().module() - label.qr().modules())
                    .isEqualTo(8.0, within());
        }
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-9);
    }

    @ParameterizedTest
    @CsvSource({"5, 5", "3, 40", "6, 6", "40, 2.5"})
    void a_label_too_small_for_its_code_is_none(double width, double height) {
        assertThat(drawn(LabelStock.single("x", LabelMedium.ROLL, "x", width, height, 0), SampleLabels.full()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("everyStock")
    void every_usual_size_lies_on_its_page_and_leaves_the_same_at_both_edges(LabelStock stock) {
        assertThat(stock.fitsThePage()).isTrue();
        if (stock.medium() == LabelMedium.SHEET) {
            LabelStock.Slot last = stock.slot(stock.toAPage() - 1);
            assertThat(stock.pageWidth() - last.x() - stock.width()).isEqualTo(stock.left(), about());
            assertThat(stock.pageHeight() - last.y() - stock.height()).isEqualTo(stock.top(), about());
        }
    }

    private static org.assertj.core.data.Offset<Double> about() {
        return org.assertj.core.data.Offset.offset(0.6);
    }

    private static Optional<LabelDrawing> drawn(LabelStock stock, LabelText text) {
        return new LabelLayout(stock, Lettering.bundled()).of(text);
    }

    private static List<String> words(LabelDrawing label) {
        List<String> words = new ArrayList<>();
        label.written().forEach(text -> words.add(text.text()));
        return words;
    }
}
