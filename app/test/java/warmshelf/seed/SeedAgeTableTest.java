package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.testing.Crops;

/** The tables of app/test/java/warmshelf/bench/seed-age.md say what the program asks for today. */
class SeedAgeTableTest {
    private static final Path TABLES = Path.of("app/test/java/warmshelf/bench/seed-age.md");
    private static final int OLDEST = 6;
    private static final List<String> CROPS = List.of(
            "tomato",
            "pepper",
            "eggplant",
            "okra",
            "sweet-corn",
            "cucumber",
            "muskmelon",
            "summer-squash",
            "snap-bean",
            "basil",
            "broccoli",
            "cabbage",
            "kale",
            "lettuce",
            "onion",
            "leek",
            "chives",
            "celery",
            "beet",
            "spinach",
            "parsley",
            "dill",
            "sunflower",
            "marigold");
    private static final Map<StorageKind, String> HEADINGS = Map.of(
            StorageKind.SHED, "### Warm room",
            StorageKind.CUPBOARD, "### Cupboard",
            StorageKind.FRIDGE, "### Jar in the fridge");

    static Stream<StorageKind> storages() {
        return HEADINGS.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("storages")
    void the_seeds_asked_for_at_each_age_are_those_of_the_table(StorageKind kept) throws IOException {
        String written = Files.readString(TABLES);
        int start = written.indexOf(HEADINGS.get(kept));
        int end = written.indexOf("\n### ", start + 1);
        String section = end < 0 ? written.substring(start) : written.substring(start, end);

        assertThat(CROPS)
                .allSatisfy(crop -> assertThat(section.lines()
                                .filter(line -> line.startsWith("| %s |".formatted(crop)))
                                .toList())
                        .as("the table should end in: %s", asked(crop, kept))
                        .singleElement()
                        .asString()
                        .endsWith("| %s |".formatted(asked(crop, kept))));
    }

    private static String asked(String crop, StorageKind kept) {
        return IntStream.rangeClosed(0, OLDEST)
                .mapToObj(age -> asked(crop, kept, age))
                .collect(Collectors.joining(", "));
    }

    /** For 12 plants, nine times in ten, one to a cell; an asterisk where a test is asked for first. */
    private static String asked(String crop, StorageKind kept, int age) {
        SeedQuestion question = new SeedQuestion(12, 0.9, AgedSeed.of(Crops.of(crop), 0), 1, 1);
        SeedNeed need = SeedNeed.of(
                        question, AgedSeed.expectation(Crops.of(crop), SeedSource.PACKET, Storage.of(kept), age))
                .orElseThrow();
        return need.sow().seeds() + (need.testFirst() ? "\\*" : "");
    }
}
