package warmshelf.table;

/**
 * Keeps text from being run as a formula: spreadsheets take a cell that begins with one of a few signs for one, and a formula can
 * read other cells or fetch from the network. An apostrophe before it keeps it text. What is guarded can be told from all other
 * text, so that nothing is lost on the way back.
 */
public final class FormulaGuard {
    /** The signs of OWASP's page "CSV Injection", with the full-width forms that it names too. */
    private static final String SIGNS = "=+-@\t\r\n＝＋－＠";

    private FormulaGuard() {}

    /** The text as it can safely stand in a cell. */
    public static String guarded(String text) {
        return isFormula(withoutApostrophes(text)) ? "'" + text : text;
    }

    /** The text that was guarded. */
    public static String unguarded(String cell) {
        return cell.startsWith("'") && isFormula(withoutApostrophes(cell)) ? cell.substring(1) : cell;
    }

    private static boolean isFormula(String text) {
        return !text.isEmpty() && SIGNS.indexOf(text.charAt(0)) >= 0;
    }

    private static String withoutApostrophes(String text) {
        int from = 0;
        while (from < text.length() && text.charAt(from) == '\'') {
            from++;
        }
        return text.substring(from);
    }
}
