package warmshelf.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.BadInput;

class TableFileTest {
    private static final TableColumns COLUMNS =
            new TableColumns(List.of(List.of("crop"), List.of("celsius", "fahrenheit")), List.of("seeds_left", "note"));

    @TempDir
    private Path folder;

    private TableFile open(byte[] bytes) throws IOException {
        return TableFile.open(Files.write(folder.resolve("t.csv"), bytes), COLUMNS);
    }

    private TableFile open(String text) throws IOException {
        return open(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<TableRow> rows(TableFile file) throws IOException {
        List<TableRow> rows = new ArrayList<>();
        file.each(new Rows(rows::add));
        return rows;
    }

    @ParameterizedTest
    @CsvSource({
        "UTF-8, false, UTF_8",
        "UTF-8, true, UTF_8_MARKED",
        "UTF-16LE, true, UTF_16_LITTLE_MARKED",
        "UTF-16BE, true, UTF_16_BIG_MARKED",
        "UTF-16LE, false, UTF_16_LITTLE",
        "UTF-16BE, false, UTF_16_BIG",
        "windows-1252, false, WINDOWS_1252"
    })
    void letters_are_told_from_the_bytes(String charset, boolean marked, TextEncoding told) throws IOException {
        String text = (marked ? "\uFEFF" : "") + "crop,celsius,note\nPeperoni,2,Jalapeño grün\n";

        TableFile file = open(text.getBytes(Charset.forName(charset)));

        assertThat(file.encoding()).isEqualTo(told);
        assertThat(file.encoding().isGuessed()).isEqualTo(charset.equals("windows-1252"));
        assertThat(rows(file).get(0).cell("note")).isEqualTo("Jalapeño grün");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"COMMA|,", "SEMICOLON|;", "TAB|\\t"})
    void the_separator_is_told_from_the_first_row(TableSeparator told, String sign) throws IOException {
        String s = sign.equals("\\t") ? "\t" : sign;
        TableFile file = open("crop" + s + "celsius" + s + "note\npepper" + s + "2" + s + "\"a,b;c\td\"\n");

        assertThat(file.separator()).isEqualTo(told);
        assertThat(rows(file).get(0).cell("note")).isEqualTo("a,b;c\td");
    }

    @Test
    void a_line_that_tells_the_separator_is_no_row() throws IOException {
        assertThat(rows(open("sep=;\r\ncrop;celsius\r\npepper;2\r\n"))).hasSize(1);
    }

    @Test
    void rows_have_the_numbers_a_spreadsheet_gives_them() throws IOException {
        List<TableRow> rows =
                rows(open("crop,celsius,note\npepper,2,\"two\nlines\"\n\n,,\ntomato,3,\"say \"\"so\"\"\"\n"));

        assertThat(rows).extracting(TableRow::number).containsExactly(2L, 5L);
        assertThat(rows.get(0).cell("note")).isEqualTo("two\nlines");
        assertThat(rows.get(1).cell("note")).isEqualTo("say \"so\"");
    }

    @Test
    void columns_are_known_in_any_order_and_spelling_and_others_are_named() throws IOException {
        TableFile file = open("Colour, Seeds left ,CROP,Celsius,\nred,7,pepper,1,\n");

        assertThat(file.unknown()).containsExactly("Colour");
        assertThat(rows(file).get(0).cell("seeds_left")).isEqualTo("7");
    }

    @Test
    void a_row_may_end_early_as_spreadsheets_leave_out_empty_cells() throws IOException {
        assertThat(rows(open("crop,celsius,note\npepper,2\n")).get(0).cell("note"))
                .isEmpty();
    }

    @Test
    void a_row_with_more_cells_than_names_is_told() throws IOException {
        List<String> told = new ArrayList<>();
        open("crop,celsius\npepper,2,3\n").each(new TableFile.Visit() {
            @Override
            public void row(TableRow row, int permille) {
                told.add("a row");
            }

            @Override
            public void tooManyCells(long number, int cells, int columns) {
                told.add("%d: %d for %d".formatted(number, cells, columns));
            }
        });
        assertThat(told).containsExactly("2: 3 for 2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "crop,note\\npepper,x|no column celsius / fahrenheit",
                "crop,celsius,Crop\\nx,1,y|the column crop twice",
                "''|is empty",
                "\\n \\n|is empty",
                "crop,celsius\\n\"pepper,2\\nx,3|quotation mark is opened and not closed"
            })
    void what_is_no_such_table_is_refused_with_a_reason(String text, String reason) {
        assertThatThrownBy(() -> rows(open(text.replace("\\n", "\n"))))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(reason);
    }

    @Test
    void workbooks_and_what_is_no_text_are_refused() {
        assertThatThrownBy(() -> open(new byte[] {'P', 'K', 3, 4, 20, 0})).hasMessageContaining("is a workbook");
        assertThatThrownBy(() -> open("crop,celsius\npep\u0000per,2\n")).hasMessageContaining("NUL");
        assertThatThrownBy(() -> open(new byte[] {'c', 'r', (byte) 0x81, 'p'})).hasMessageContaining("windows-1252");
        assertThatThrownBy(() -> open(new byte[] {'c', 'r', 1, 'p'})).hasMessageContaining("no text");
        assertThatThrownBy(() -> open(new byte[] {(byte) 0xFF, (byte) 0xFE, 0, (byte) 0xD8, 'a', 0}))
                .hasMessageContaining("UTF-16");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-03-31", "3/31/2027", "31.3.2027", "31/3/2027", "2027/3/31"})
    void a_day_that_can_be_read_in_one_way_is_read(String written) {
        assertThat(new WrittenDays().read(written)).hasToString("Optional[2027-03-31]");
    }

    @Test
    void a_day_that_could_be_two_is_told_by_the_others_of_its_column() {
        WrittenDays days = new WrittenDays();
        assertThat(days.read("3/4/2027")).isEmpty();
        assertThat(days.isAmbiguous("3/4/2027")).isTrue();
        assertThat(days.isAmbiguous("13/14/2027")).isFalse();

        days.learn("3/31/2027");
        assertThat(days.monthFirst()).contains("3/31/2027");
        assertThat(days.read("3/4/2027")).hasToString("Optional[2027-03-04]");

        days.learn("31/3/2027");
        assertThat(days.monthFirst()).isEmpty();
        assertThat(days.read("3/4/2027")).isEmpty();
        assertThat(days.read("3.4.2027")).hasToString("Optional[2027-04-03]");
        assertThat(days.read("4/4/2027")).hasToString("Optional[2027-04-04]");
    }
}
