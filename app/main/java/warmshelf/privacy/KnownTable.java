package warmshelf.privacy;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.db.DescribedTable;

/**
 * What a table holds of a person.
 *
 * @param columns those that may be told, in the words of the data dictionary
 * @param rows a value for each of the columns; null is not known, and people are told apart as {@link Who}
 */
record KnownTable(String name, String about, List<DescribedTable.Column> columns, List<List<@Nullable Object>> rows) {

    /** Of people, only whether it is the one who reads. */
    enum Who {
        YOU,
        SOMEBODY_ELSE
    }
}
