package warmshelf.archive;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Where the rows of a group come from: a database, or a file. Whoever asks sees one at a time. */
interface RowSource {
    /** Shows each row of a table, in the table's {@linkplain ArchiveTable#order() order}. */
    void forEach(ArchiveTable table, Visitor visitor) throws IOException;

    /** The picture of which a row gives the name. */
    byte[] picture(String name) throws IOException;

    /** Is shown the rows of a table. */
    interface Visitor {
        /**
         * Is shown a row.
         *
         * @param row the values in the order of the columns, by their kind: UUID, String, Long, BigDecimal, Double, Boolean,
         *     LocalDate, Instant, the name of a picture; null: not known. It is not kept, and changes with the next row
         */
        void row(@Nullable Object[] row) throws IOException;
    }
}
