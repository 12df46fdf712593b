package warmshelf.frost;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToIntFunction;
import warmshelf.ReferenceTable;

/**
 * The rows of a large bundled table that is kept sorted and free of quotes. Only the row looked for is ever turned into
 * text, so that a table of 40,000 rows costs a few milliseconds at the start instead of a few hundred.
 */
final class SortedRows {
    private final byte[] bytes;
    private final int[] starts;

    private SortedRows(byte[] bytes, int[] starts) {
        this.bytes = bytes;
        this.starts = starts;
    }

    static SortedRows of(String file) {
        byte[] bytes = ReferenceTable.bytes(file);
        int[] starts = new int[bytes.length / 16 + 1];
        int rows = 0;
        for (int i = 0; i < bytes.length - 1; i++) {
            if (bytes[i] == '\n') {
                if (rows == starts.length) {
                    starts = Arrays.copyOf(starts, 2 * rows);
                }
                starts[rows++] = i + 1;
            }
        }
        return new SortedRows(bytes, Arrays.copyOf(starts, rows));
    }

    /** Number of rows below the heading. */
    int size() {
        return starts.length;
    }

    /** The cells of one row, the first below the heading being 0. */
    String[] row(int index) {
        int start = starts[index];
        int end = start;
        while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
            end++;
        }
        return new String(bytes, start, end - start, StandardCharsets.UTF_8).split(",", -1);
    }

    /**
     * The row where the comparison is zero, by halving.
     *
     * @param comparison negative for rows before the one looked for, positive for rows after it
     */
    Optional<String[]> find(ToIntFunction<String[]> comparison) {
        int low = 0;
        int high = starts.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            String[] row = row(middle);
            int order = comparison.applyAsInt(row);
            if (order == 0) {
                return Optional.of(row);
            }
            if (order < 0) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return Optional.empty();
    }
}
