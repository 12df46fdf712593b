package warmshelf.web;

import io.javalin.http.Context;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import warmshelf.table.TableShape;

/** Sends a table as a file, written while it is read. */
public final class TableAnswer {
    /** The part of an address that says for whom the table is. */
    public static final String SHAPE = "for";

    private TableAnswer() {}

    /** Writes the table. */
    public interface Table {
        void writeTo(Writer out, TableShape shape) throws IOException;
    }

    /** Sends it in the shape that the address asks for; without one, or with none that there is, for a program. */
    public static void send(Context ctx, String name, Table table) {
        String asked = ctx.queryParam(SHAPE);
        TableShape shape =
                asked == null ? TableShape.PROGRAM : TableShape.named(asked).orElse(TableShape.PROGRAM);
        ctx.contentType("text/csv; charset=utf-8; header=present")
                .header("Content-Disposition", "attachment; filename=\"%s.csv\"".formatted(name));
        try (Writer out = new BufferedWriter(new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8))) {
            table.writeTo(out, shape);
        } catch (IOException gone) {
            throw new UncheckedIOException("the table could not be sent", gone);
        }
    }
}
