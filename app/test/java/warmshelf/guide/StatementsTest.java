package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Hardiness;
import warmshelf.testing.CommandRun;
import warmshelf.words.Units;

/**
 * What extension services, the law and published trials say (app/test/resources/statements.csv, each with its page and its
 * words), against what the program prints. A range holds where the two overlap, a figure where it lies within the source's. A
 * statement has a tolerance only with its reason, and one that does not hold says why the program keeps to another figure.
 */
class StatementsTest {
    private static final double MM_PER_INCH = 25.4;
    private static final int DISAGREEMENTS = 36;
    private static final String LAST_FROST = "2027-05-15";

    private record Span(double low, double high) {
        static Span of(double one) {
            return new Span(one, one);
        }

        boolean overlaps(Span other) {
            return low <= other.high && high >= other.low;
        }
    }

    @Test
    void each_statement_holds_or_says_why_it_does_not() throws IOException {
        Map<String, int[]> tally = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        for (CSVRecord row : statements()) {
            Span said = said(row);
            Span printed = printed(row);
            boolean holds = said.overlaps(printed);
            int[] count = tally.computeIfAbsent(row.get("what"), what -> new int[2]);
            count[holds ? 0 : 1]++;
            if (holds != row.get("differs").isEmpty()) {
                wrong.add("%s %s %s: %s says %s to %s, printed %.1f to %.1f%s"
                        .formatted(
                                row.get("crop_id"),
                                row.get("what"),
                                row.get("at"),
                                row.get("publisher"),
                                row.get("low"),
                                row.get("high"),
                                printed.low,
                                printed.high,
                                holds ? " (holds, and is said not to)" : ""));
            }
        }

        int held = tally.values().stream().mapToInt(count -> count[0]).sum();
        int differ = tally.values().stream().mapToInt(count -> count[1]).sum();
        System.out.printf(
                Locale.ROOT,
                "%d of %d statements hold; hold and differ by matter: %s%n",
                held,
                held + differ,
                tally.entrySet().stream()
                        .map(each -> "%s %d/%d".formatted(each.getKey(), each.getValue()[0], each.getValue()[1]))
                        .collect(Collectors.joining(", ")));
        assertThat(wrong).isEmpty();
        assertThat(held + differ).isGreaterThanOrEqualTo(120);
        assertThat(differ).as("known disagreements, each with its reason").isEqualTo(DISAGREEMENTS);
    }

    @Test
    void each_statement_names_its_page_and_its_words_and_a_tolerance_its_reason() throws IOException {
        assertThat(statements()).allSatisfy(row -> {
            assertThat(row.get("source_url")).startsWith("http");
            assertThat(row.get("quote")).isNotEmpty();
            assertThat(row.get("publisher")).isNotEmpty();
            assertThat(row.get("why_tolerance").isEmpty())
                    .isEqualTo(row.get("tolerance").isEmpty());
        });
    }

    private static List<CSVRecord> statements() throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = format.parse(new InputStreamReader(
                Objects.requireNonNull(StatementsTest.class.getResourceAsStream("/statements.csv")),
                StandardCharsets.UTF_8))) {
            return parser.getRecords();
        }
    }

    private static Span said(CSVRecord row) {
        double low = row.get("low").isEmpty() ? Double.NEGATIVE_INFINITY : number(row, row.get("low"));
        double high = row.get("high").isEmpty() ? Double.POSITIVE_INFINITY : number(row, row.get("high"));
        String tolerance = row.get("tolerance");
        if (tolerance.startsWith("factor ")) {
            double factor = Double.parseDouble(tolerance.substring("factor ".length()));
            return new Span(low / factor, high * factor);
        }
        double more = tolerance.isEmpty() ? 0 : Double.parseDouble(tolerance);
        return new Span(low - more, high + more);
    }

    private static double number(CSVRecord row, String cell) {
        return switch (row.get("unit")) {
            case "class" -> Hardiness.named(cell).place();
            case "cover" -> List.of("on-top", "lightly-covered", "covered").indexOf(cell);
            case "F" -> celsius(Double.parseDouble(cell));
            default -> Double.parseDouble(cell);
        };
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    private static Span printed(CSVRecord row) {
        String crop = row.get("crop_id");
        return switch (row.get("what")) {
            case "weeks-indoors" -> weeks(crop);
            case "planting-out" ->
                new Span(crop(crop).plantOutOffsetDays(), crop(crop).plantOutOffsetDaysLatest());
            case "depth" -> Span.of(known(crop(crop).depthMm()) / MM_PER_INCH);
            case "light" -> cover(crop(crop));
            case "hardiness" -> Span.of(crop(crop).hardiness().place());
            case "days-to-emergence" -> days(crop, celsius(Double.parseDouble(row.get("at"))));
            case "best-warmth" -> comfortable(crop);
            case "night-minimum" -> Span.of(known(crop(crop).nightMinimumC()));
            case "legal-minimum" -> Span.of(known(crop(crop).legalMinimumPercent()));
            case "seed-life" -> Span.of(known(crop(crop).seedLifeYears()));
            case "half-life" -> halfLife(crop);
            case "advice" -> advice(row.get("at").split("/", 2));
            default -> throw new IllegalArgumentException(row.get("what"));
        };
    }

    private static Crop crop(String id) {
        return CropCatalogue.bundled().get(id);
    }

    private static double known(@Nullable Number figure) {
        return Optional.ofNullable(figure).orElseThrow().doubleValue();
    }

    /** Seed that needs light lies on top; where the crop wants the dark it is covered; else any cover will do. */
    private static Span cover(Crop crop) {
        return switch (crop.light()) {
            case NEEDED -> Span.of(0);
            case DARK -> new Span(1, 2);
            case INDIFFERENT, NOT_KNOWN -> new Span(0, 2);
        };
    }

    /** Weeks between the days of sowing and of planting out that {@code timeline} prints. */
    private static Span weeks(String crop) {
        JsonNode answer = CommandRun.of(
                        "timeline",
                        "--crop",
                        crop,
                        "--last-frost",
                        LAST_FROST,
                        "--season",
                        "2027",
                        "--today",
                        "2026-11-01")
                .json();
        LocalDate out = day(answer, "plant-out", "ideal");
        double most = ChronoUnit.DAYS.between(day(answer, "sow", "earliest"), out) / 7.0;
        double least = ChronoUnit.DAYS.between(day(answer, "sow", "latest"), out) / 7.0;
        return new Span(least, most);
    }

    private static LocalDate day(JsonNode timeline, String step, String which) {
        for (JsonNode each : timeline.get("steps")) {
            if (each.get("step").asText().equals(step)) {
                return LocalDate.parse(each.get(which).asText());
            }
        }
        throw new AssertionError("no step " + step + " in " + timeline);
    }

    private static Span days(String crop, double celsius) {
        JsonNode answer = CommandRun.of("emerge", crop, String.format(Locale.ROOT, "%.1f", celsius))
                .json();
        if (!answer.get("emerges").asBoolean()) {
            return Span.of(Double.NaN);
        }
        return new Span(answer.get("days5").asDouble(), answer.get("days95").asDouble());
    }

    private static Span comfortable(String crop) {
        JsonNode ends = CommandRun.of("emerge", crop, "20").json().get("comfortableC");
        return new Span(ends.get(0).asDouble(), ends.get(1).asDouble());
    }

    private static Span halfLife(String crop) {
        return Span.of(
                CommandRun.of("viability", "--crop", crop, "--years", "1", "--moisture", "7.5", "--temperature", "20.3")
                        .json()
                        .get("halfLifeYears")
                        .asDouble());
    }

    private static Span advice(String[] row) {
        Figures figures = Figures.in(Units.AMERICAN);
        return new Span(
                Double.parseDouble(figures.leastNumber(row[0], row[1])),
                Double.parseDouble(figures.mostNumber(row[0], row[1])));
    }
}
