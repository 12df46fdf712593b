package warmshelf.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A route whose address names something, and for whom that is.
 *
 * @param table where what it names stands; empty: it names no row
 * @param owner the column that says whose a row is; empty: it is the group's
 */
record NamingRoute(String method, String address, String table, String owner, OpenTo openTo) {
    private static final Path FILE = Path.of("app/test/resources/routes-by-owner.csv");
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();

    /** For whom a thing is, of those whom the role of the route lets in. */
    enum OpenTo {
        OWNER,
        OWNER_OR_COORDINATOR,
        /** Whoever the role lets in. */
        ALL,
        /** The address is made of words or figures and names no row. */
        WORDS,
        /** The address is itself the key. */
        SECRET
    }

    static List<NamingRoute> all() {
        try (BufferedReader text = Files.newBufferedReader(FILE)) {
            return FORMAT.parse(text).stream().map(NamingRoute::of).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static NamingRoute of(CSVRecord row) {
        return new NamingRoute(
                row.get("method"),
                row.get("address"),
                row.get("table"),
                row.get("owner"),
                OpenTo.valueOf(row.get("open to").toUpperCase(Locale.ROOT).replace(' ', '_')));
    }

    /** As a list of routes would call it. */
    String name() {
        return method + " " + address;
    }

    boolean namesARow() {
        return !table.isEmpty();
    }

    boolean isForScripts() {
        return address.startsWith("/api/");
    }

    boolean changes() {
        return method.equals("POST");
    }

    /** The address of one row; whatever else it names is not there. */
    String of(UUID id) {
        return address.replaceFirst("\\{[^}]*}", id.toString())
                .replaceAll("\\{[^}]*}", UUID.randomUUID().toString());
    }
}
