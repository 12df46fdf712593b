package warmshelf.exchange;

import java.util.List;
import warmshelf.table.TableHeading;
import warmshelf.table.TableRow;

/** Judges the rows of one file one after another, and takes them in where that is wanted. */
interface IncomingRows {
    /** Whether all rows are to be {@linkplain #learn seen} before the first is judged. */
    default boolean learns() {
        return false;
    }

    /** Sees a row beforehand. */
    default void learn(TableRow row) {}

    RowJudgement judge(TableRow row);

    /** After the last row. */
    default void finish() {}

    /** What is to be known of the file as a whole, in sentences; asked after the last row. */
    default List<String> remarks(TableHeading heading) {
        return List.of();
    }

    /** What may be a mistake, in sentences; the person is asked back once. */
    default List<String> doubts() {
        return List.of();
    }

    /** The links that were made. */
    default List<MadeLink> links() {
        return List.of();
    }

    /** A link by which somebody joins, by the path that opens it. */
    record MadeLink(String name, String path) {}
}
