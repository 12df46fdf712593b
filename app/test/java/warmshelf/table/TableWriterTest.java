package warmshelf.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.h2.tools.Csv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableWriterTest {
    private static final List<String> TEXTS = List.of(
            "Jalapeño",
            "=HYPERLINK(\"http://example.org\")",
            "two\r\nlines, and a comma; and a semicolon\tand a tab",
            "'=already an apostrophe",
            "''",
            "-3 °C",
            "@home",
            "König „Ludwig“",
            "Перец",
            "唐辛子");

    @TempDir
    private Path folder;

    @Test
    void lines_and_quotes_are_as_rfc_4180_gives_them() throws IOException {
        StringBuilder out = new StringBuilder();
        TableWriter table = new TableWriter(out, TableShape.PROGRAM, List.of("a", "b"));
        table.row("say \"so\"", null);
        table.row(LocalDate.of(2027, 3, 1), new BigDecimal("-2.50"));

        // RFC 4180, section 2: lines end with CRLF (1), a quotation mark within quotation marks is doubled (7)
        assertThat(out).hasToString("a,b\r\n\"say \"\"so\"\"\",\r\n2027-03-01,-2.50\r\n");
    }

    @Test
    void spreadsheets_with_decimal_commas_get_semicolons_and_a_mark() throws IOException {
        StringBuilder out = new StringBuilder();
        new TableWriter(out, TableShape.SEMICOLONS, List.of("a", "b")).row(-2.5, 1_000);

        assertThat(out).hasToString("\uFEFFa;b\r\n-2,5;1000\r\n");
    }

    @ParameterizedTest
    @EnumSource(TableShape.class)
    void every_text_comes_back_by_our_own_reader(TableShape shape) throws IOException {
        Path file = folder.resolve("table.csv");
        StringBuilder out = new StringBuilder();
        TableWriter table = new TableWriter(out, shape, List.of("text", "more"));
        for (String text : TEXTS) {
            table.row(text, "x");
        }
        Files.writeString(file, out);

        List<String> back = new ArrayList<>();
        TableFile.open(file, new TableColumns(List.of(List.of("text")), List.of("more")))
                .each(new Rows(row -> back.add(row.cell("text"))));

        assertThat(back).containsExactlyElementsOf(TEXTS);
    }

    /** A second parser: the one that the database H2 brings for its function CSVREAD. */
    @ParameterizedTest
    @EnumSource(TableShape.class)
    void every_text_comes_back_by_a_second_parser_safe_from_formulas(TableShape shape)
            throws IOException, SQLException {
        StringBuilder out = new StringBuilder();
        TableWriter table = new TableWriter(out, shape, List.of("text", "more"));
        for (String text : TEXTS) {
            table.row(text, "x");
        }
        Csv second = new Csv();
        second.setFieldSeparatorRead(shape.separator());

        List<String> back = new ArrayList<>();
        String unmarked = shape.marked() ? out.substring(1) : out.toString();
        try (ResultSet rows = second.read(new StringReader(unmarked), null)) {
            while (rows.next()) {
                back.add(rows.getString(1));
            }
        }

        assertThat(back).noneMatch(cell -> "=+-@\t\r\n".indexOf(cell.charAt(0)) >= 0);
        assertThat(back.stream().map(FormulaGuard::unguarded)).containsExactlyElementsOf(TEXTS);
    }

    /** The signs of OWASP's page "CSV Injection". */
    @ParameterizedTest
    @ValueSource(strings = {"=1", "+1", "-1", "@a", "\ta", "\ra", "\na", "＝1", "＋1", "－1", "＠a"})
    void a_formula_is_kept_text(String formula) {
        assertThat(FormulaGuard.guarded(formula)).isEqualTo("'" + formula);
        assertThat(FormulaGuard.unguarded("'" + formula)).isEqualTo(formula);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "'", "'tis", "a=b", "''tis"})
    void other_text_stays_as_it_is(String text) {
        assertThat(FormulaGuard.guarded(text)).isEqualTo(text);
        assertThat(FormulaGuard.unguarded(text)).isEqualTo(text);
    }

    /** Decimal signs by country: Unicode CLDR, as Java carries it. */
    @ParameterizedTest
    @CsvSource({
        "US, COMMAS",
        "GB, COMMAS",
        "AU, COMMAS",
        "DE, SEMICOLONS",
        "FR, SEMICOLONS",
        "SE, SEMICOLONS",
        "NL, SEMICOLONS",
        "XX, COMMAS"
    })
    void a_country_has_its_spreadsheet(String country, TableShape shape) {
        assertThat(TableShape.ofCountry(country)).isEqualTo(shape);
    }

    @Test
    void the_mark_is_that_of_utf_8() {
        // The Unicode Standard, chapter 23.8: EF BB BF
        assertThat("\uFEFF".getBytes(StandardCharsets.UTF_8)).containsExactly(0xEF, 0xBB, 0xBF);
    }
}
