package warmshelf.table;

import static warmshelf.table.TableSentences.SAY;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import warmshelf.BadInput;
import warmshelf.Given;

/**
 * A table that somebody sent: how it is written is told from the file, then it is read row by row, as often as wanted.
 *
 * @param unknown columns that are not read, as the file names them
 */
public record TableFile(
        Path path, TextEncoding encoding, TableSeparator separator, TableHeading heading, List<String> unknown) {
    private static final String SEPARATOR_TOLD = "sep=";
    private static final int LONGEST_CELL = 100_000;

    /** Takes the rows one after another. */
    public interface Visit {
        /**
         * A row that is not empty.
         *
         * @param permille how much of the file is read
         */
        void row(TableRow row, int permille);

        /** A row with more cells than the heading. */
        void tooManyCells(long number, int cells, int columns);
    }

    /**
     * Looks at a file.
     *
     * @throws BadInput when it is no table with these columns
     */
    public static TableFile open(Path path, TableColumns columns) throws IOException {
        TextEncoding encoding = TextEncoding.of(path);
        TableHeading heading = TableHeading.NONE;
        TableSeparator separator = TableSeparator.COMMA;
        for (TableSeparator each : TableSeparator.values()) {
            TableHeading found = heading(path, encoding, each, columns);
            if (found.isBetterThan(heading)) {
                heading = found;
                separator = each;
            }
        }
        if (heading.names().isEmpty()) {
            throw new BadInput(SAY.empty());
        }
        heading.refuseUnfit(columns);
        return new TableFile(path, encoding, separator, heading, heading.unknown(columns));
    }

    private static TableHeading heading(
            Path path, TextEncoding encoding, TableSeparator separator, TableColumns columns) throws IOException {
        try (Reader text = text(encoding, Files.newByteChannel(path));
                CSVParser parser = parser(text, separator)) {
            for (CSVRecord row : parser) {
                if (!isEmpty(row)) {
                    return TableHeading.of(row, columns);
                }
            }
            return TableHeading.NONE;
        } catch (UncheckedIOException unreadable) {
            // with another separator it may be readable; else the reading of its rows tells where it is not
            return TableHeading.NONE;
        }
    }

    private static Reader text(TextEncoding encoding, SeekableByteChannel channel) throws IOException {
        return new BufferedReader(encoding.open(Channels.newInputStream(channel)));
    }

    private static CSVParser parser(Reader text, TableSeparator separator) throws IOException {
        skipSeparatorTold(text);
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator.sign())
                .setIgnoreEmptyLines(false)
                .get()
                .parse(text);
    }

    /** Some spreadsheets are told the separator by a line of its own before the table. */
    private static void skipSeparatorTold(Reader text) throws IOException {
        text.mark(SEPARATOR_TOLD.length());
        char[] start = new char[SEPARATOR_TOLD.length()];
        int read = text.read(start);
        if (read == start.length && new String(start).equalsIgnoreCase(SEPARATOR_TOLD)) {
            ((BufferedReader) text).readLine();
        } else {
            text.reset();
        }
    }

    /**
     * Reads all rows.
     *
     * @throws BadInput where it cannot be taken apart
     */
    public void each(Visit visit) throws IOException {
        try (SeekableByteChannel channel = Files.newByteChannel(path);
                Reader text = text(encoding, channel);
                CSVParser parser = parser(text, separator)) {
            long size = Math.max(1, channel.size());
            Iterator<CSVRecord> rows = parser.iterator();
            boolean named = false;
            while (rows.hasNext()) {
                CSVRecord row = rows.next();
                refuseOverlong(row);
                if (!isEmpty(row)) {
                    if (named) {
                        visit(visit, row, (int) (channel.position() * 1000 / size));
                    }
                    named = true;
                }
            }
        } catch (UncheckedIOException unreadable) {
            throw new BadInput(SAY.quotesOpen(line(unreadable)));
        }
    }

    private void visit(Visit visit, CSVRecord row, int permille) {
        int columns = heading.names().size();
        for (int i = columns; i < row.size(); i++) {
            if (!row.get(i).isBlank()) {
                visit.tooManyCells(row.getRecordNumber(), row.size(), columns);
                return;
            }
        }
        visit.row(new TableRow(row.getRecordNumber(), heading.cells(row)), permille);
    }

    private static void refuseOverlong(CSVRecord row) {
        for (String cell : row) {
            if (cell.length() > LONGEST_CELL) {
                throw new BadInput(SAY.overlong(row.getRecordNumber(), cell.length(), Given.shown(cell)));
            }
        }
    }

    private static boolean isEmpty(CSVRecord row) {
        for (String cell : row) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }

    /** The parser says in words alone on which line it stopped. */
    private static String line(UncheckedIOException unreadable) {
        List<String> numbers = new ArrayList<>();
        java.util.regex.Matcher found =
                java.util.regex.Pattern.compile("\\d+").matcher(String.valueOf(unreadable.getMessage()));
        if (found.find()) {
            numbers.add(found.group());
        }
        return numbers.isEmpty() ? "" : numbers.get(0);
    }
}
