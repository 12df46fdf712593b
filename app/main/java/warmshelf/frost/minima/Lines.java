package warmshelf.frost.minima;

import java.io.IOException;
import java.io.Reader;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** Hands out a text's lines one at a time; a text without line ends must not fill the memory. */
final class Lines {
    private static final int LONGEST_LINE = 20_000;
    private static final int BUFFER = 32_768;

    private final Reader reader;
    private final char[] buffer = new char[BUFFER];
    private final StringBuilder line = new StringBuilder();
    private int from;
    private int to;

    Lines(Reader reader) {
        this.reader = reader;
    }

    /**
     * The next line without its end, or null after the last.
     *
     * @throws BadInput when a line is longer than any of daily minima could be
     */
    @Nullable
    String next() throws IOException {
        line.setLength(0);
        boolean any = false;
        while (from < to || fill()) {
            any = true;
            int end = from;
            while (end < to && buffer[end] != '\n') {
                end++;
            }
            line.append(buffer, from, end - from);
            if (line.length() > LONGEST_LINE) {
                throw new BadInput("The file has a line of more than %,d letters; it is no file of daily minima."
                        .formatted(LONGEST_LINE));
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
