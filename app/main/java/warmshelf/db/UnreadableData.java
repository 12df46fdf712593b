package warmshelf.db;

/** A data file cannot be opened, or not all of its rows can be read. The message says what the database says of it, in one line. */
public final class UnreadableData extends RuntimeException {
    private static final long serialVersionUID = 1;

    UnreadableData(Exception refused) {
        super(firstLine(String.valueOf(refused.getMessage())), refused);
    }

    private static String firstLine(String message) {
        String line = message.lines().findFirst().orElse("");
        return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }
}
