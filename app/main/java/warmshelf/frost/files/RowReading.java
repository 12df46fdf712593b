package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.IOException;
import warmshelf.BadInput;
import warmshelf.frost.minima.TextLines;

/** Leads a reader through the lines of one text after another and notes which could not be used. */
final class RowReading {
    private final RowReader reader;
    private final ImportedRows findings;
    private long line;

    RowReading(RowReader reader, ImportedRows findings) {
        this.reader = reader;
        this.findings = findings;
    }

    /**
     * Reads a text.
     *
     * @param name of the file where there are several, else empty
     */
    void read(String name, TextLines lines) throws IOException {
        long own = 0;
        boolean begun = false;
        for (String text = lines.next(); text != null; text = lines.next()) {
            line++;
            own++;
            if (text.isBlank()) {
                continue;
            }
            boolean heading = !begun && reader.hasHeading();
            try {
                if (begun) {
                    reader.row(line, text);
                } else {
                    begun = true;
                    reader.begin(line, FileRecognition.plain(name, text));
                }
            } catch (BadInput wrong) {
                if (heading && name.isEmpty()) {
                    throw wrong;
                }
                findings.problem(line, sentence(name, own, wrong));
                if (heading) {
                    // one file among many that is something else: it is left out, the others are read
                    return;
                }
            }
        }
    }

    private static String sentence(String name, long own, BadInput wrong) {
        String words = String.valueOf(wrong.getMessage());
        return name.isEmpty() ? words : SAY.lineOfFile(name, own, words);
    }
}
