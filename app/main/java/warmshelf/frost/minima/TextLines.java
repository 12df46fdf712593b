package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.io.IOException;
import java.io.Reader;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** Hands out a text's lines one at a time; a text without line ends must not fill the memory. */
public final class TextLines {
    private static final int BUFFER = 32_768;

    private final Reader reader;
    private final int longest;
    private final String kind;
    private final char[] buffer = new char[BUFFER];
    private final StringBuilder line = new StringBuilder();
    private int from;
    private int to;

    /**
     * Reads lines.
     *
     * @param longest a line of more letters is refused
     * @param kind what the text is read as, for that sentence, for example 'file of daily minima'
     */
    public TextLines(Reader reader, int longest, String kind) {
        this.reader = reader;
        this.longest = longest;
        this.kind = kind;
    }

    /**
     * The next line without its end, or null after the last.
     *
     * @throws BadInput when a line is longer than any could be
     */
    public @Nullable String next() throws IOException {
        line.setLength(0);
        boolean any = false;
        while (from < to || fill()) {
            any = true;
            int end = from;
            while (end < to && buffer[end] != '\n') {
                end++;
            }
            line.append(buffer, from, end - from);
            if (line.length() > longest) {
                throw new BadInput(SAY.lineTooLong(longest, kind));
            }
            boolean whole = end < to;
            from = whole ? end + 1 : end;
            if (whole) {
                break;
            }
        }
        return any ? withoutReturn() : null;
    }

    private String withoutReturn() {
        int length = line.length();
        return length > 0 && line.charAt(length - 1) == '\r' ? line.substring(0, length - 1) : line.toString();
    }

    private boolean fill() throws IOException {
        from = 0;
        to = Math.max(0, reader.read(buffer));
        return to > 0;
    }
}
