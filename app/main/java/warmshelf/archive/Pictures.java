package warmshelf.archive;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The pictures of which rows give the names. */
final class Pictures {
    private Pictures() {}

    /** The names of a row's pictures: none where they were taken out. */
    static List<String> in(ArchiveTable table, @Nullable Object[] row) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < row.length; i++) {
            if (table.columns().get(i).kind() == ColumnKind.PICTURE
                    && row[i] instanceof String name
                    && !name.isEmpty()) {
                names.add(name);
            }
        }
        return names;
    }
}
