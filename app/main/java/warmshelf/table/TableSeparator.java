package warmshelf.table;

/** What stands between the cells of a table that somebody sent. */
public enum TableSeparator {
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t');

    private final char sign;

    TableSeparator(char sign) {
        this.sign = sign;
    }

    char sign() {
        return sign;
    }
}
