package warmshelf.archive;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Writes rows as JSON (RFC 8259), one object a line. */
final class RowJson implements RowSource.Visitor, AutoCloseable {
    static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            // the same digits whatever the version of Java
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final ArchiveTable table;
    private final JsonGenerator json;

    RowJson(ArchiveTable table, OutputStream out) throws IOException {
        this.table = table;
        this.json = FACTORY.createGenerator(out);
        json.setPrettyPrinter(new MinimalPrettyPrinter(""));
    }

    @Override
    public void row(@Nullable Object[] row) throws IOException {
        json.writeStartObject();
        for (int i = 0; i < row.length; i++) {
            json.writeFieldName(table.columns().get(i).name());
            write(row[i]);
        }
        json.writeEndObject();
        json.writeRaw('\n');
    }

    private void write(@Nullable Object value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Long whole) {
            json.writeNumber(whole);
        } else if (value instanceof Double real) {
            json.writeNumber(real);
        } else if (value instanceof BigDecimal decimal) {
            json.writeNumber(decimal.toPlainString());
        } else if (value instanceof Boolean yes) {
            json.writeBoolean(yes);
        } else {
            json.writeString(value.toString());
        }
    }

    @Override
    public void close() throws IOException {
        json.close();
    }
}
