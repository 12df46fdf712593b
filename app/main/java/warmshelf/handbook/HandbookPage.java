package warmshelf.handbook;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.db.DescribedTable;

/**
 * A page of the handbook.
 *
 * @param next the page to read after it; null after the last
 * @param program what options and commands say of themselves
 * @param tables what the database says of itself
 */
record HandbookPage(Chapter chapter, @Nullable Chapter next, ProgramWords program, List<DescribedTable> tables) {

    /** The handbook's first page: what there is to read. */
    record Contents(List<Chapter> chapters) {}
}
