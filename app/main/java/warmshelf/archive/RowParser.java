package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** Reads rows of a table that {@link RowJson} wrote, and refuses what is none. */
final class RowParser {
    /** Without an exponent, by which a few letters ask for a number of a billion digits. */
    private static final Pattern PLAIN = Pattern.compile("-?\\d{1,20}(\\.\\d{1,20})?");

    private final ArchiveTable table;
    private final JsonParser json;
    private long number;

    private RowParser(ArchiveTable table, JsonParser json) {
        this.table = table;
        this.json = json;
    }

    /**
     * Shows each row.
     *
     * @throws BadInput naming the row that is none of this table
     */
    static void read(InputStream in, ArchiveTable table, RowSource.Visitor visitor) throws IOException {
        try (JsonParser json = RowJson.FACTORY.createParser(in)) {
            new RowParser(table, json).read(visitor);
        }
    }

    private void read(RowSource.Visitor visitor) throws IOException {
        @Nullable Object[] row = new @Nullable Object[table.columns().size()];
        boolean[] given = new boolean[row.length];
        while (next() != null) {
            number++;
            if (json.currentToken() != JsonToken.START_OBJECT) {
                throw refused(SAY.noRow());
            }
            Arrays.fill(given, false);
            while (next() != JsonToken.END_OBJECT) {
                fill(row, given);
            }
            for (int i = 0; i < given.length; i++) {
                if (!given[i]) {
                    throw refused(SAY.columnMissing(table.columns().get(i).name()));
                }
            }
            visitor.row(row);
        }
    }

    private void fill(@Nullable Object[] row, boolean[] given) throws IOException {
        String name = json.currentName();
        int place = name == null ? -1 : table.place(name);
        if (place < 0) {
            throw refused(SAY.columnUnknown(String.valueOf(name)));
        }
        next();
        row[place] = value(table.columns().get(place));
        given[place] = true;
    }

    private @Nullable JsonToken next() throws IOException {
        try {
            return json.nextToken();
        } catch (JsonProcessingException broken) {
            throw refused(SAY.noRow());
        }
    }

    private @Nullable Object value(ArchiveColumn column) throws IOException {
        JsonToken token = json.currentToken();
        if (token == JsonToken.VALUE_NULL && column.mayBeEmpty()) {
            return null;
        }
        try {
            Object value = token == null ? null : read(column.kind(), token);
            if (value != null) {
                return value;
            }
        } catch (JsonProcessingException | IllegalArgumentException | DateTimeParseException unreadable) {
            throw refused(SAY.valueUnreadable(column.name()));
        }
        throw refused(SAY.valueUnreadable(column.name()));
    }

    /** The value; null where it is of another kind. */
    private @Nullable Object read(ColumnKind kind, JsonToken token) throws IOException {
        return switch (kind) {
            case WHOLE_NUMBER -> token == JsonToken.VALUE_NUMBER_INT ? (Object) json.getLongValue() : null;
            case DECIMAL ->
                token.isNumeric() && PLAIN.matcher(json.getText()).matches() ? new BigDecimal(json.getText()) : null;
            case REAL -> token.isNumeric() ? (Object) json.getDoubleValue() : null;
            case YES_NO -> token.isBoolean() ? (Object) json.getBooleanValue() : null;
            case KEY, TEXT, DAY, MOMENT, PICTURE -> token == JsonToken.VALUE_STRING ? ofText(kind) : null;
        };
    }

    private @Nullable Object ofText(ColumnKind kind) throws IOException {
        String text = json.getText();
        return switch (kind) {
            case KEY -> UUID.fromString(text);
            case DAY -> LocalDate.parse(text);
            case MOMENT -> Instant.parse(text);
            case PICTURE -> text.isEmpty() || (PartName.isPhoto(text) && PartName.isKnown(text)) ? text : null;
            default -> text;
        };
    }

    private BadInput refused(String why) {
        return new BadInput(SAY.rowRefused(table.name(), number, why));
    }
}
