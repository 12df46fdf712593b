package warmshelf.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import warmshelf.table.TableColumns;

/** What the rows of a table can be that is brought in. */
public enum IncomingKind {
    LOTS(
            "lots",
            50_000,
            new TableColumns(
                    List.of(List.of("crop"), List.of("variety"), List.of("year")),
                    List.of(
                            "id",
                            "seeds_left",
                            "owner",
                            "treated",
                            "source",
                            "storage",
                            "storage_celsius",
                            "storage_moisture_percent",
                            "tests",
                            "note"))),
    /** Each row becomes a link by which one person joins. */
    MEMBERS("members", 500, new TableColumns(List.of(List.of("name")), List.of("role"))),
    NIGHTS(
            "nights",
            50_000,
            new TableColumns(
                    List.of(List.of("day", "date"), List.of("celsius", "fahrenheit")), List.of("thermometer"))),
    /** Sowings of seasons that are over, with what came of them. */
    SOWINGS(
            "sowings",
            20_000,
            new TableColumns(
                    List.of(
                            List.of("season"),
                            List.of("crop"),
                            List.of("variety"),
                            List.of("sown_on"),
                            List.of("seeds")),
                    List.of(
                            "grower",
                            "seed_year",
                            "method",
                            "warm",
                            "came_up",
                            "counted_on",
                            "lost",
                            "planted_out_on",
                            "given_up",
                            "note")));

    private final String word;
    private final int mostRows;
    // Two lists of names.
    @SuppressWarnings("ImmutableEnumChecker")
    private final TableColumns columns;

    IncomingKind(String word, int mostRows, TableColumns columns) {
        this.word = word;
        this.mostRows = mostRows;
        this.columns = columns;
    }

    /** As forms and the database write it. */
    public String word() {
        return word;
    }

    /** Rows taken at once. */
    public int mostRows() {
        return mostRows;
    }

    TableColumns columns() {
        return columns;
    }

    /** The names of the columns that it needs. */
    public String neededColumns() {
        return String.join(
                ", ",
                columns.needed().stream()
                        .map(oneOf -> String.join(" / ", oneOf))
                        .toList());
    }

    /** The names of the columns that it may have besides. */
    public String optionalColumns() {
        return String.join(", ", columns.optional());
    }

    boolean isForCoordinators() {
        return this == MEMBERS;
    }

    static Optional<IncomingKind> named(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
