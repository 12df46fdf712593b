package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

class KeepingFormTest {
    private static final Units FAHRENHEIT = Units.AMERICAN;

    // The equation's stated range (seed-ageing.md): 5 to 25 % moisture; its constants were measured up to 50 °C.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "60 | 8 | storageTemperature | Temperature in °C was '60'; a number from -20 to 50 is accepted.",
                "-21 | 8 | storageTemperature | Temperature in °C was '-21'; a number from -20 to 50 is accepted.",
                "20 | 40 | storageMoisture | Seed moisture in % was '40'; a number from 5 to 25 is accepted.",
                "20 | '' | storageTemperature | A measured storage needs both figures",
            })
    void what_lies_outside_the_range_of_the_equation_is_refused(
            String celsius, String moisture, String field, String sentence) {
        FormReader reader = typed("own", celsius, moisture);

        KeepingForm.storage(reader, Units.METRIC);

        assertThat(reader.problems().get(field)).startsWith(sentence);
    }

    @Test
    void nothing_chosen_is_a_packet_of_which_nobody_knows_how_it_is_kept() {
        FormReader reader = new FormReader(Map.of());

        assertThat(KeepingForm.source(reader)).isEqualTo(SeedSource.PACKET);
        assertThat(KeepingForm.storage(reader, Units.METRIC)).isEqualTo(Storage.UNKNOWN);
        assertThat(reader.ok()).isTrue();
    }

    @Test
    void temperatures_are_read_and_shown_in_the_persons_units() {
        Storage kept = KeepingForm.storage(typed("own", "41", "7"), FAHRENHEIT);

        assertThat(kept).isEqualTo(Storage.measured(5, 7));
        assertThat(KeepingForm.typed(lot(kept), FAHRENHEIT).get("storageTemperature"))
                .containsExactly("41");
        assertThat(KeepingForm.typed(lot(kept), Units.METRIC).get("storageTemperature"))
                .containsExactly("5");
    }

    @Test
    void each_whole_degree_comes_back_as_the_same() {
        for (int degree = 32; degree <= 120; degree++) {
            Storage kept = KeepingForm.storage(typed("own", String.valueOf(degree), "7"), FAHRENHEIT);
            assertThat(KeepingForm.typed(lot(kept), FAHRENHEIT).get("storageTemperature"))
                    .containsExactly(String.valueOf(degree));
        }
        for (int degree = -20; degree <= 50; degree++) {
            Storage kept = KeepingForm.storage(typed("own", String.valueOf(degree), "7"), Units.METRIC);
            assertThat(KeepingForm.typed(lot(kept), Units.METRIC).get("storageTemperature"))
                    .containsExactly(String.valueOf(degree));
        }
    }

    @Test
    void what_stands_on_a_lot_reads_back_as_the_same() {
        for (StorageKind kind : StorageKind.values()) {
            Storage kept = kind == StorageKind.OWN ? Storage.measured(-18, 5.5) : Storage.of(kind);
            FormReader reader = new FormReader(KeepingForm.typed(lot(kept), FAHRENHEIT));

            assertThat(KeepingForm.storage(reader, FAHRENHEIT)).isEqualTo(kept);
        }
    }

    private static FormReader typed(String storage, String temperature, String moisture) {
        Map<String, List<String>> typed = new HashMap<>();
        typed.put("storage", List.of(storage));
        typed.put("storageTemperature", List.of(temperature));
        typed.put("storageMoisture", List.of(moisture));
        return new FormReader(typed);
    }

    private static Lot lot(Storage storage) {
        return new Lot(
                new UUID(0, 1), "pepper", "", 2027, null, null, null, false, "", SeedSource.SAVED, storage, 0, 1);
    }
}
