package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Standing;
import warmshelf.testing.Crops;

/** Against the half-lives of open-storage studies, kind by kind: db/reference/seed-half-life.csv names the source of each. */
class HalfLifeTest {
    private static final double HALF = 0.5;

    private record Miss(HalfLife.Row row, double with, double without, double doubt) {
        double factor() {
            return without / row.years();
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %.1f | %.1f | %+.0f %% | %.1f | %+.0f %% |",
                    row.kind(),
                    row.standing() == Standing.FROM_MEMORY ? "memory" : "read",
                    row.years(),
                    with,
                    100 * (with / row.years() - 1),
                    without,
                    100 * (factor() - 1));
        }
    }

    @Test
    void each_published_half_life_lies_within_twice_the_doubt_of_what_the_other_kinds_foretell() {
        List<Miss> errors = errors();

        System.out.println("| kind | row | found, years | reckoned | error | reckoned without its own rows | error |");
        errors.forEach(error -> System.out.println(error.line()));

        assertThat(errors)
                .hasSizeGreaterThanOrEqualTo(14)
                .allSatisfy(error -> assertThat(Math.abs(Math.log(error.factor())))
                        .as(error.row().kind())
                        .isLessThan(2 * error.doubt()));
        assertThat(errors)
                .as("within what each row may be off")
                .allSatisfy(error -> assertThat(
                                Math.abs(Math.log(error.with() / error.row().years())))
                        .as(error.row().kind())
                        .isLessThan(Math.log(error.row().spread())));
    }

    // Nagel and Börner 2009: chives 5, lettuce 7, maize 19, bean 21, pea 23 years at 20.3 °C and 50.5 % humidity.
    @Test
    void the_kinds_stand_in_the_order_in_which_they_were_found() {
        double chives = HalfLife.of(Crops.of("chives")).years();
        double lettuce = HalfLife.of(Crops.of("lettuce")).years();
        double maize = HalfLife.of(Crops.of("sweet-corn")).years();
        double bean = HalfLife.of(Crops.of("snap-bean")).years();

        assertThat(List.of(chives, lettuce, maize, bean)).isSorted();
        assertThat(lettuce).isBetween(5.0, 10.0);
    }

    @Test
    void what_is_from_memory_is_taken_as_less_sure_than_what_was_read() {
        double read = HalfLife.rows().stream()
                .filter(row ->
                        row.standing() == Standing.PUBLISHED && row.source().startsWith("Nagel"))
                .mapToDouble(HalfLife.Row::spread)
                .max()
                .orElseThrow();

        assertThat(HalfLife.rows().stream().filter(row -> row.standing() == Standing.FROM_MEMORY))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.spread()).isGreaterThan(read));
    }

    @Test
    void a_kind_of_which_nothing_was_found_is_told_with_more_doubt_than_one_that_was() {
        assertThat(HalfLife.of(Crops.of("marigold")).doubt())
                .isGreaterThan(HalfLife.of(Crops.of("lettuce")).doubt());
        // Solberg et al. 2020: half-lives in rooms run from 5 to 10 years.
        assertThat(HalfLife.of(Crop.unlisted("something")).years()).isBetween(5.0, 10.0);
        assertThat(HalfLife.of(Crops.of("marigold")).sources()).isEmpty();
    }

    @Test
    void the_packet_lives_of_gardeners_tables_stand_to_half_lives_as_the_constant_says() {
        double logarithms = 0;
        int kinds = 0;
        for (String species : species()) {
            for (Crop crop : CropCatalogue.bundled().all()) {
                if (crop.species().startsWith(species) && crop.seedLifeYears() != null) {
                    logarithms += Math.log(found(species) / crop.seedLifeYears());
                    kinds++;
                    break;
                }
            }
        }

        assertThat(Math.exp(logarithms / kinds)).isBetween(0.9 * HalfLife.PACKET_LIVES, 1.1 * HalfLife.PACKET_LIVES);
    }

    // The review: 5 to 10 years in rooms, 40 to 60 in cold and dry stores.
    @Test
    void a_jar_in_the_fridge_lengthens_the_life_as_much_as_the_review_found() {
        double fridge = StorageShift.of(Storage.of(StorageKind.FRIDGE)).times();

        assertThat(fridge).isBetween(40.0 / 10, 60.0 / 5).isBetween(5.5, 8.0);
        assertThat(StorageShift.of(StorageShift.ROOM).times()).isEqualTo(1);
        assertThat(StorageShift.of(Storage.of(StorageKind.SHED)).times()).isBetween(HALF, 1.0);
        assertThat(StorageShift.of(Storage.UNKNOWN).doubt())
                .isGreaterThan(StorageShift.of(Storage.of(StorageKind.CUPBOARD)).doubt());
    }

    // The same review: under -18 to -20 °C twice or three times as long as the 40 to 60 years.
    @Test
    void a_freezer_lengthens_it_as_the_review_found_and_not_without_end() {
        double years = HalfLife.of(Crop.unlisted("something")).years()
                * StorageShift.of(Storage.measured(-18, 5)).times();

        assertThat(years).isBetween(2 * 40.0, 3 * 60.0);
    }

    private static List<Miss> errors() {
        List<Miss> errors = new ArrayList<>();
        for (HalfLife.Row row : HalfLife.rows()) {
            if (!row.species().isEmpty()) {
                List<HalfLife.Row> others = HalfLife.rows().stream()
                        .filter(other -> !other.species().equals(row.species()))
                        .toList();
                int life = packetLife(row.species());
                HalfLife without = HalfLife.of(row.species(), life, others);
                double doubt = Math.hypot(without.doubt(), Math.log(row.spread()));
                errors.add(new Miss(
                        row, HalfLife.of(row.species(), life, HalfLife.rows()).years(), without.years(), doubt));
            }
        }
        errors.sort(Comparator.comparing(error -> error.row().kind()));
        return errors;
    }

    private static List<String> species() {
        return HalfLife.rows().stream()
                .map(HalfLife.Row::species)
                .filter(species -> !species.isEmpty())
                .distinct()
                .toList();
    }

    private static double found(String species) {
        return Math.exp(HalfLife.rows().stream()
                .filter(row -> row.species().equals(species))
                .mapToDouble(row -> Math.log(row.years()))
                .average()
                .orElseThrow());
    }

    private static int packetLife(String species) {
        return CropCatalogue.bundled().all().stream()
                .filter(crop -> crop.species().startsWith(species) && crop.seedLifeYears() != null)
                .mapToInt(Crop::seedLifeYears)
                .findFirst()
                .orElse(0);
    }
}
