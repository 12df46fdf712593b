package warmshelf.archive;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;

/** The rows of a database, as a connection sees them. */
final class RowStore implements RowSource {
    private static final int AT_ONCE = 500;

    private final Connection connection;
    private final boolean isH2;

    RowStore(Connection connection) throws SQLException {
        this.connection = connection;
        this.isH2 = isH2(connection);
    }

    static boolean isH2(Connection connection) throws SQLException {
        return connection.getMetaData().getDatabaseProductName().equals("H2");
    }

    @Override
    public void forEach(ArchiveTable table, Visitor visitor) throws IOException {
        try (PreparedStatement question = connection.prepareStatement(question(table))) {
            question.setFetchSize(AT_ONCE);
            try (ResultSet rows = question.executeQuery()) {
                @Nullable Object[] row = new @Nullable Object[table.columns().size()];
                while (rows.next()) {
                    read(rows, table, row);
                    visitor.row(row);
                }
            }
        } catch (SQLException refused) {
            throw new DataAccessException("the rows of " + table.name() + " could not be read", refused);
        }
    }

    private String question(ArchiveTable table) {
        String columns = table.columns().stream()
                .map(column ->
                        column.kind() == ColumnKind.PICTURE ? "octet_length(" + column.name() + ")" : column.name())
                .collect(Collectors.joining(", "));
        String order = table.order().stream().map(this::inOrder).collect(Collectors.joining(", "));
        return "select %s from %s order by %s".formatted(columns, table.name(), order);
    }

    /** Texts in the order of their bytes in UTF-8, whatever language a database sorts by. */
    private String inOrder(ArchiveColumn column) {
        if (column.kind() != ColumnKind.TEXT) {
            return column.name();
        }
        return isH2 ? "stringtoutf8(" + column.name() + ")" : column.name() + " collate \"C\"";
    }

    private static void read(ResultSet rows, ArchiveTable table, @Nullable Object[] row) throws SQLException {
        for (int i = 0; i < row.length; i++) {
            row[i] = value(rows, i + 1, table.columns().get(i).kind());
        }
        for (int i = 0; i < row.length; i++) {
            if (table.columns().get(i).kind() == ColumnKind.PICTURE && row[i] instanceof Long bytes) {
                row[i] = bytes == 0 ? "" : PartName.photo((UUID) key(table, row));
            }
        }
    }

    private static Object key(ArchiveTable table, @Nullable Object[] row) {
        Object key = row[table.place(table.key().get(0))];
        if (key == null) {
            throw new IllegalStateException("a row of " + table.name() + " has no key");
        }
        return key;
    }

    private static @Nullable Object value(ResultSet rows, int place, ColumnKind kind) throws SQLException {
        return switch (kind) {
            case KEY -> rows.getObject(place, UUID.class);
            case TEXT -> rows.getString(place);
            case WHOLE_NUMBER, PICTURE -> {
                long number = rows.getLong(place);
                yield rows.wasNull() ? null : number;
            }
            case DECIMAL -> rows.getBigDecimal(place);
            case REAL -> {
                double number = rows.getDouble(place);
                yield rows.wasNull() ? null : number;
            }
            case YES_NO -> {
                boolean yes = rows.getBoolean(place);
                yield rows.wasNull() ? null : yes;
            }
            case DAY -> rows.getObject(place, LocalDate.class);
            case MOMENT -> {
                OffsetDateTime moment = rows.getObject(place, OffsetDateTime.class);
                yield moment == null ? null : moment.toInstant();
            }
        };
    }

    @Override
    public byte[] picture(String name) {
        try (PreparedStatement question = connection.prepareStatement("select jpeg from photo where id = ?")) {
            question.setObject(1, PartName.ofPhoto(name));
            try (ResultSet found = question.executeQuery()) {
                if (!found.next()) {
                    throw new IllegalStateException(name + " is gone");
                }
                return found.getBytes(1);
            }
        } catch (SQLException refused) {
            throw new DataAccessException(name + " could not be read", refused);
        }
    }
}
