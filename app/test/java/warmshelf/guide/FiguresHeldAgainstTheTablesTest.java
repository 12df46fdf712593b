package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import warmshelf.ReferenceTable;
import warmshelf.words.Units;

/** Every figure a page shows of a source is one of that source's row, as printed or turned into the reader's units. */
class FiguresHeldAgainstTheTablesTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:,\\d{3})*(?:[.]\\d+)?(?:/\\d+)?");
    /** What the guide reckons from the rows' figures, each with its sum. */
    private static final List<Double> RECKONED = List.of(
            1.5, // half household solution of 3 %, half water
            0.021, // 0.7 % by volume of 3 %
            0.9, // 30 % by volume of 3 %
            0.5, // grams of a fertiliser one fifth nitrogen in a litre at 100 milligrams of nitrogen
            1.9); // the same in a gallon of 3.785 litres

    @Test
    void in_inches_and_fahrenheit() {
        assertAllHeld(Articles.US);
    }

    @Test
    void in_centimetres_and_celsius() {
        assertAllHeld(Articles.METRIC);
    }

    @Test
    void in_units_of_both_kinds() {
        assertAllHeld(Units.of("C", "in"));
        assertAllHeld(Units.of("F", "cm"));
    }

    /** A figure that is quoted out of a row's words is one of those words' figures. */
    @Test
    void what_is_quoted_out_of_a_row_stands_in_it() {
        List<CSVRecord> quoted = ReferenceTable.rows("advice.csv").stream()
                .filter(row -> !row.get("of_table").isEmpty() && !row.get("low").isEmpty())
                .toList();

        assertThat(quoted).hasSizeGreaterThan(40).allSatisfy(row -> {
            Set<Double> allowed = allowed(words(row));
            assertThat(Stream.of("low", "high", "metric_low", "metric_high")
                            .map(row::get)
                            .filter(figure -> !figure.isEmpty())
                            .map(Double::parseDouble))
                    .as(row.get("topic") + ": " + row.get("item"))
                    .allSatisfy(number -> assertThat(allowed)
                            .anySatisfy(known -> assertThat(number).isEqualTo(known)));
        });
    }

    /** All that the row says that a figure is quoted from. */
    private static String words(CSVRecord quoted) {
        String table = quoted.get("of_table");
        String column = Map.of("practice", "item", "containers", "name", "safety", "hazard")
                .getOrDefault(table, "crop");
        List<CSVRecord> rows = ReferenceTable.rows(table + ".csv").stream()
                .filter(row -> row.get(column).equals(quoted.get("of_row")))
                .filter(row -> !table.equals("practice") || row.get("topic").equals(quoted.get("topic")))
                .toList();
        assertThat(rows).as(quoted.toString()).isNotEmpty();
        return rows.stream().map(row -> String.join(" ", row.toList())).collect(Collectors.joining(" "));
    }

    private static void assertAllHeld(Units units) {
        assertThat(Articles.claims(units)).hasSizeGreaterThan(60).allSatisfy(claim -> {
            Set<Double> allowed = allowed(claim.printed());
            assertThat(numbers(claim.says()))
                    .as(claim + "")
                    .allSatisfy(number -> assertThat(allowed)
                            .anySatisfy(known -> assertThat(number).isEqualTo(known)));
        });
    }

    /** The row's figures, and each of them as Celsius, centimetres, ounces, quarts, days or a share of solution. */
    private static Set<Double> allowed(String printed) {
        Set<Double> allowed = new HashSet<>(RECKONED);
        for (double number : numbers(printed.replace("1/8", "0.125").replace("1/4", "0.25"))) {
            allowed.add(number);
            allowed.add((double) Math.round(number));
            allowed.add((double) Math.round((number - 32) * 5 / 9));
            allowed.add((double) Math.round(number * 9 / 5 + 32));
            allowed.add(number / 10);
            allowed.add(Math.round(number / 25.4 * 100) / 100.0);
            allowed.add(Math.round(number / 29.5735 * 10) / 10.0);
            allowed.add(Math.round(number / 0.946353 * 10) / 10.0);
            allowed.add(number * 7);
        }
        allowed.add(122.0); // four feet in centimetres
        return allowed;
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(match -> match.group().replace(",", ""))
                .filter(match -> !match.contains("/"))
                .map(Double::parseDouble)
                .toList();
    }
}
