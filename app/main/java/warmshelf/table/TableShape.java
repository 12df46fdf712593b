package warmshelf.table;

import java.text.DecimalFormatSymbols;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * For whom a table is written. All three are RFC 4180 but for the separator of the second; lines end with CR and LF.
 *
 * <p>Where spreadsheets write decimals with a comma they also take the semicolon for the separator when a file is opened by a
 * double click, and a file without the byte order mark is read in the machine's old character set; programs stumble over that mark.
 */
public enum TableShape {
    /** A spreadsheet whose decimals have a point. */
    COMMAS("commas", ',', false, true),
    /** A spreadsheet whose decimals have a comma. */
    SEMICOLONS("semicolons", ';', true, true),
    /** A program: UTF-8 without a mark. */
    PROGRAM("program", ',', false, false);

    private final String word;
    private final char separator;
    private final boolean decimalComma;
    private final boolean marked;

    TableShape(String word, char separator, boolean decimalComma, boolean marked) {
        this.word = word;
        this.separator = separator;
        this.decimalComma = decimalComma;
        this.marked = marked;
    }

    /** The word that stands in addresses. */
    public String word() {
        return word;
    }

    char separator() {
        return separator;
    }

    boolean decimalComma() {
        return decimalComma;
    }

    /** Whether the file begins with a byte order mark. */
    boolean marked() {
        return marked;
    }

    public static Optional<TableShape> named(String word) {
        return Arrays.stream(values()).filter(shape -> shape.word.equals(word)).findFirst();
    }

    /**
     * What a spreadsheet of a country opens at once, by the decimal sign of most languages that are written there.
     *
     * @param country ISO 3166, two letters
     */
    public static TableShape ofCountry(String country) {
        List<Locale> languages = Arrays.stream(Locale.getAvailableLocales())
                .filter(locale -> locale.getCountry().equals(country))
                .toList();
        long commas = languages.stream()
                .filter(locale -> DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',')
                .count();
        return 2 * commas > languages.size() ? SEMICOLONS : COMMAS;
    }
}
