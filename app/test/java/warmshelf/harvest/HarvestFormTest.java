package warmshelf.harvest;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HarvestFormTest {
    private static final UUID ID = new UUID(7, 7);
    private static final LocalDate TODAY = LocalDate.of(2027, 10, 3);
    private static final HarvestStore.PlantedOut PEPPERS =
            new HarvestStore.PlantedOut(ID, 2027, "pepper", "Lantern Row", LocalDate.of(2027, 6, 1));

    @Test
    void one_press_is_enough() {
        HarvestForm form = new HarvestForm(Map.of("again-" + ID, List.of("again")), TODAY);

        assertThat(form.notes(List.of(PEPPERS)))
                .containsExactly(new HarvestNote(ID, HarvestAnswer.Again.AGAIN, null, null, null, null, null, ""));
        assertThat(form.reader().ok()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "again|perhaps|Grow Lantern Row again was 'perhaps'",
                "amount|tons|Amount of Lantern Row was 'tons'",
                "taste|odd|Taste of Lantern Row was 'odd'",
                "kilograms|-1|Kilograms of Lantern Row was '-1'",
                "kilograms|lots|Kilograms of Lantern Row was 'lots'",
                "first|2027-05-01|First harvest of Lantern Row was 2027-05-01; a day from 2027-06-01, when it was planted",
                "last|2027-10-04|Last harvest of Lantern Row was 2027-10-04",
                "first|soon|First harvest of Lantern Row was 'soon'"
            })
    void what_cannot_be_used_is_named_and_kept(String field, String typed, String sentence) {
        HarvestForm form = new HarvestForm(Map.of(field + "-" + ID, List.of(typed)), TODAY);
        form.notes(List.of(PEPPERS));

        assertThat(form.reader().problems().get(field + "-" + ID)).contains(sentence);
        assertThat(form.reader().typed()).containsEntry(field + "-" + ID, typed);
    }

    @Test
    void the_last_harvest_is_not_before_the_first() {
        HarvestForm form = new HarvestForm(
                Map.of("first-" + ID, List.of("2027-08-10"), "last-" + ID, List.of("2027-08-01")), TODAY);
        form.notes(List.of(PEPPERS));

        assertThat(form.reader().problems().get("last-" + ID))
                .isEqualTo(
                        "Last harvest of Lantern Row was 2027-08-01, before the first, 2027-08-10; that day or a later one"
                                + " is accepted.");
    }
}
