package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;

/** A germination test as it is typed in: when, how many seeds, how many came up. */
public final class TestForm {
    private final FormReader reader;
    private final @Nullable GerminationTest test;

    private TestForm(FormReader reader, @Nullable GerminationTest test) {
        this.reader = reader;
        this.test = test;
    }

    /** Nothing typed yet: the usual ten seeds, counted today. */
    public static TestForm blank(LocalDate today) {
        return new TestForm(
                new FormReader(Map.of("testedOn", List.of(today.toString()), "testSeeds", List.of("10"))), null);
    }

    public static TestForm of(Map<String, List<String>> typed, LocalDate today) {
        FormReader reader = new FormReader(typed);
        LocalDate testedOn = reader.date("testedOn", SAY.testDayField());
        if (testedOn.isAfter(today)) {
            reader.refuse("testedOn", SAY.dayToCome(testedOn, today));
        }
        int seeds = reader.wholeNumber("testSeeds", SAY.seedsTestedField(), 1, GerminationTest.MOST_SEEDS);
        int germinated = reader.wholeNumber("germinated", SAY.cameUpField(), 0, GerminationTest.MOST_SEEDS);
        if (reader.ok() && germinated > seeds) {
            reader.refuse("germinated", SAY.moreThanTested(germinated, seeds, seeds));
        }
        return new TestForm(reader, reader.ok() ? new GerminationTest(testedOn, germinated, seeds) : null);
    }

    /** The test, where everything typed can be used. */
    public Optional<GerminationTest> test() {
        return Optional.ofNullable(test);
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
