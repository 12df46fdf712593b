package warmshelf.seed;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Standing;

/**
 * How the rules for testing seeds have a crop's seed tested ({@code db/reference/germination-test.csv}, from the table of 7 CFR
 * 201.58).
 *
 * @param nightC degrees Celsius for sixteen hours of the day
 * @param dayC for the other eight; the same where one temperature is kept
 * @param days until the last count
 */
record LaboratoryTest(int nightC, int dayC, int days, String source) {
    private static final Map<String, LaboratoryTest> BUNDLED = ReferenceTable.rows("germination-test.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get("crop_id"), LaboratoryTest::of));

    /** Empty where the rules do not have the crop. */
    static Optional<LaboratoryTest> of(String cropId) {
        return Optional.ofNullable(BUNDLED.get(cropId));
    }

    private static LaboratoryTest of(CSVRecord row) {
        return new LaboratoryTest(
                Integer.parseInt(row.get("night_c")),
                Integer.parseInt(row.get("day_c")),
                Integer.parseInt(row.get("final_count_days")),
                source(row.get("source_title"), Standing.named(row.get("standing"))));
    }

    /** Who says so, with how far that is to be trusted where it is not read in print. */
    private static String source(String title, Standing standing) {
        return standing.word().isEmpty() ? title : "%s (%s)".formatted(title, standing.word());
    }
}
