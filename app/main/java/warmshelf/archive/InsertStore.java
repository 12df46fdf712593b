package warmshelf.archive;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts rows into one table, many at once. */
final class InsertStore implements RowSource.Visitor, AutoCloseable {
    private static final int AT_ONCE = 500;
    private static final int PICTURES_AT_ONCE = 4;

    private final ArchiveTable table;
    private final RowSource rows;
    private final PreparedStatement insert;
    private final @Nullable PreparedStatement point;
    private int waiting;

    private InsertStore(
            ArchiveTable table, RowSource rows, PreparedStatement insert, @Nullable PreparedStatement point) {
        this.table = table;
        this.rows = rows;
        this.insert = insert;
        this.point = point;
    }

    /** That the database did not take a row. */
    static final class NotTaken extends IOException {
        private static final long serialVersionUID = 1L;

        NotTaken(SQLException refusal) {
            super(refusal);
        }

        /** The database's own words, on one line and without a stop at the end. */
        String why() {
            SQLException refusal = (SQLException) Objects.requireNonNull(getCause());
            SQLException first = refusal.getNextException() == null ? refusal : refusal.getNextException();
            String words = String.valueOf(first.getMessage());
            return words.lines().findFirst().orElse("").replaceAll("[.;]?\\s*$", "");
        }
    }

    /**
     * Prepares to fill a table.
     *
     * @param rows where pictures are
     */
    static InsertStore into(ArchiveTable table, Connection connection, RowSource rows) throws SQLException {
        String names = table.columns().stream().map(ArchiveColumn::name).collect(Collectors.joining(", "));
        PreparedStatement insert = connection.prepareStatement("insert into %s (%s) %s values (%s)"
                .formatted(
                        table.name(),
                        names,
                        table.counted().isPresent() ? "overriding system value" : "",
                        String.join(", ", Collections.nCopies(table.columns().size(), "?"))));
        return new InsertStore(table, rows, insert, pointing(table, connection));
    }

    private static @Nullable PreparedStatement pointing(ArchiveTable table, Connection connection) throws SQLException {
        List<ArchiveColumn> ahead = table.pointingAhead();
        return ahead.isEmpty()
                ? null
                : connection.prepareStatement("update %s set %s where %s"
                        .formatted(
                                table.name(),
                                ahead.stream()
                                        .map(column -> column.name() + " = ?")
                                        .collect(Collectors.joining(", ")),
                                table.key().stream().map(name -> name + " = ?").collect(Collectors.joining(" and "))));
    }

    /** Adds a row; what names a row of the same table that may follow is left out until all are there. */
    @Override
    public void row(@Nullable Object[] row) throws IOException {
        try {
            List<ArchiveColumn> ahead = table.pointingAhead();
            for (int i = 0; i < row.length; i++) {
                ArchiveColumn column = table.columns().get(i);
                bind(insert, i + 1, column.kind(), ahead.contains(column) ? null : row[i]);
            }
            add(insert);
        } catch (SQLException refused) {
            throw new NotTaken(refused);
        }
    }

    /** Once all rows are there: has a row name the one of its own table that it names. */
    void pointAhead(@Nullable Object[] row) throws IOException {
        PreparedStatement statement = point;
        List<ArchiveColumn> ahead = table.pointingAhead();
        if (statement == null || ahead.stream().allMatch(column -> row[table.place(column.name())] == null)) {
            return;
        }
        try {
            List<ArchiveColumn> bound = Stream.concat(
                            ahead.stream(), table.key().stream().map(table::column))
                    .toList();
            for (int i = 0; i < bound.size(); i++) {
                ArchiveColumn column = bound.get(i);
                bind(statement, i + 1, column.kind(), row[table.place(column.name())]);
            }
            add(statement);
        } catch (SQLException refused) {
            throw new NotTaken(refused);
        }
    }

    private void add(PreparedStatement statement) throws SQLException {
        statement.addBatch();
        waiting++;
        if (waiting >= (table.hasPictures() ? PICTURES_AT_ONCE : AT_ONCE)) {
            statement.executeBatch();
            waiting = 0;
        }
    }

    private void bind(PreparedStatement statement, int place, ColumnKind kind, @Nullable Object value)
            throws SQLException, IOException {
        if (value == null) {
            statement.setNull(place, type(kind));
        } else if (kind == ColumnKind.PICTURE) {
            String name = value.toString();
            statement.setBytes(place, name.isEmpty() ? new byte[0] : rows.picture(name));
        } else if (value instanceof Instant moment) {
            statement.setObject(place, moment.atOffset(ZoneOffset.UTC));
        } else {
            statement.setObject(place, value);
        }
    }

    private static int type(ColumnKind kind) {
        return switch (kind) {
            case KEY -> Types.OTHER;
            case TEXT -> Types.VARCHAR;
            case WHOLE_NUMBER -> Types.BIGINT;
            case DECIMAL -> Types.NUMERIC;
            case REAL -> Types.DOUBLE;
            case YES_NO -> Types.BOOLEAN;
            case DAY -> Types.DATE;
            case MOMENT -> Types.TIMESTAMP_WITH_TIMEZONE;
            case PICTURE -> Types.BINARY;
        };
    }

    /** Puts in what still waits. */
    void finish() throws IOException {
        try {
            insert.executeBatch();
            if (point != null) {
                point.executeBatch();
            }
            waiting = 0;
        } catch (SQLException refused) {
            throw new NotTaken(refused);
        }
    }

    @Override
    public void close() throws SQLException {
        insert.close();
        if (point != null) {
            point.close();
        }
    }
}
