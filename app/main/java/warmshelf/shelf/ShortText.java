package warmshelf.shelf;

/** Text cut to the room it has in a picture, where nothing wraps. */
final class ShortText {
    // average widths of a letter of wide system sans faces at 12 px; narrower faces leave a little room
    private static final double LETTER = 6.6;
    private static final double BOLD_LETTER = 7.5;

    private ShortText() {}

    static String fit(String text, int width, boolean bold) {
        int letters = (int) (width / (bold ? BOLD_LETTER : LETTER));
        if (letters < 3) {
            return "";
        }
        return text.length() <= letters ? text : text.substring(0, letters - 1).strip() + "…";
    }
}
