package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;
import warmshelf.BadInput;
import warmshelf.Given;

/**
 * Reads GeoNames' open file of postal codes: a line each, tab-separated, with country, code, place, three levels of
 * administration by name and code, latitude, longitude and accuracy (GeoNames' readme). A code that several settlements share
 * keeps the first one's name and gets their mean position, so that codes are handed on only at the end.
 */
final class PostcodeFile implements RowReader, AutoCloseable {
    private static final Pattern COUNTRY = Pattern.compile("[A-Z]{2}");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,3}(\\.\\d+)?");
    private static final Pattern CODE = Pattern.compile("[\\p{L}\\p{N}]+");
    private static final int LEAST_CELLS = 11;
    private static final int MOST_CELLS = 12;
    private static final int LATITUDE = 9;
    private static final int LONGITUDE = 10;
    private static final int LONGEST_CODE = 20;
    private static final int LONGEST_PLACE = 180;
    private static final int LONGEST_REGION = 100;

    private final ImportedRows findings;
    private final PostcodeMerge pile;

    PostcodeFile(ImportedRows findings, Path folder) throws IOException {
        this.findings = findings;
        this.pile = new PostcodeMerge(folder);
    }

    /** Whether a line is a row of such a file. */
    static boolean isRow(String line) {
        String[] cells = line.split("\t", -1);
        return cells.length >= LEAST_CELLS
                && cells.length <= MOST_CELLS
                && COUNTRY.matcher(cells[0]).matches()
                && NUMBER.matcher(cells[LATITUDE]).matches();
    }

    @Override
    public boolean hasHeading() {
        return false;
    }

    @Override
    public void begin(long line, String text) {
        row(line, text);
    }

    @Override
    public void row(long line, String text) {
        String[] cells = text.split("\t", -1);
        if (cells.length < LEAST_CELLS || cells.length > MOST_CELLS) {
            throw new BadInput(SAY.columnsByTab(cells.length, MOST_CELLS));
        }
        if (!COUNTRY.matcher(cells[0]).matches()) {
            throw new BadInput(SAY.noCountry(Given.shown(cells[0])));
        }
        String code = cells[1].replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
        if (code.length() > LONGEST_CODE || !CODE.matcher(code).matches()) {
            throw new BadInput(SAY.noPostcode(Given.shown(cells[1]), LONGEST_CODE));
        }
        double latitude = Given.decimal(SAY.theLatitude(), cells[LATITUDE], -90, 90);
        double longitude = Given.decimal(SAY.theLongitude(), cells[LONGITUDE], -180, 180);
        try {
            pile.add(new PostcodeRow(
                    cells[0],
                    code,
                    StationCodes.shortened(cells[2].strip(), LONGEST_PLACE),
                    StationCodes.shortened(cells[3].strip(), LONGEST_REGION),
                    latitude,
                    longitude));
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    @Override
    public void end() {
        try {
            pile.forEach(findings::place);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public void close() throws IOException {
        pile.close();
    }
}
