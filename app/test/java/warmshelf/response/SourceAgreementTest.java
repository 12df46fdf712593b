package warmshelf.response;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.crop.SourceMatter;
import warmshelf.crop.SourceStatement;
import warmshelf.crop.SourcedRange;
import warmshelf.testing.Crops;

/** The tomato has 5 to 7 weeks. */
class SourceAgreementTest {

    private static SourceStatement weeks(double low, double high, String publisher) {
        return new SourceStatement(
                "tomato",
                SourceMatter.WEEKS_INDOORS,
                low,
                high,
                false,
                "",
                "a page",
                "https://a",
                publisher,
                LocalDate.of(2026, 12, 1));
    }

    private static String said(SourceStatement... statements) {
        return SourceAgreement.words(new SourcedRange(SourceMatter.WEEKS_INDOORS, Crops.TOMATO, List.of(statements)));
    }

    @Test
    void what_nobody_was_read_on_is_said_to_be_so() {
        assertThat(said()).isEqualTo("no service’s page was found");
    }

    @Test
    void one_service_alone_is_never_called_agreement_among_services() {
        assertThat(said(weeks(5, 6, "Iowa"), weeks(6, 7, "Iowa"))).isEqualTo("one service alone, which agrees");
        assertThat(said(weeks(8, 9, "Iowa"))).isEqualTo("one service alone, which says otherwise");
    }

    @Test
    void services_agree_where_all_allow_the_figure_and_who_leaves_it_out_is_counted() {
        assertThat(said(weeks(5, 6, "Iowa"), weeks(6, 7, "Utah")))
                .isEqualTo("2 services, which all allow what stands here");
        assertThat(said(weeks(4, 6, "Iowa"), weeks(6, 7, "Utah")))
                .isEqualTo("2 services, which all allow what stands here; some go beyond it");
        assertThat(said(weeks(8, 9, "Iowa"), weeks(6, 7, "Utah")))
                .isEqualTo("2 services; one leaves out what stands here");
        assertThat(said(weeks(8, 9, "Iowa"), weeks(8, 8, "Maine"), weeks(6, 7, "Utah")))
                .isEqualTo("3 services; 2 leave out what stands here");
    }

    // Tomatillos: no page was found that could be read.
    @Test
    void each_matter_of_a_crop_of_the_reference_is_told() {
        assertThat(SourceAgreement.of(Crops.of("tomatillo")))
                .hasSize(SourceMatter.values().length)
                .contains(new SourceAgreement("Weeks indoors", "no service’s page was found"));
    }
}
