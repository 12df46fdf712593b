package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.util.ArrayList;
import java.util.List;

/** The rows that were not understood: the first two hundred by line, the rest counted. */
final class ProblemList {
    static final int MOST_KEPT = 200;
    private static final int LONGEST_SENTENCE = 500;

    private final List<ImportProblem> kept = new ArrayList<>();
    private long lastLine;
    private long count;

    void add(long line, String sentence) {
        count++;
        // a row may have one sentence; a second one about the same row is only counted
        if (kept.size() < MOST_KEPT && (kept.isEmpty() || line > lastLine)) {
            kept.add(new ImportProblem(line, StationCodes.shortened(sentence, LONGEST_SENTENCE)));
            lastLine = line;
        }
    }

    List<ImportProblem> kept() {
        return kept;
    }

    long count() {
        return count;
    }

    /** How many rows there were, and how many of them are listed; empty where there were none. */
    String words() {
        if (count == 0) {
            return "";
        }
        String rows = SAY.rowsProblem(count);
        return count > kept.size() ? SAY.firstListed(rows, kept.size()) : rows;
    }
}
