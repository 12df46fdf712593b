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

    /** A crop's name, 'Pepper, sweet and mild hot' or 'Onion (seedlings)': in full where it fits, else its first word or two. */
    static String fitCrop(String name, int width) {
        if (fit(name, width, true).equals(name)) {
            return name;
        }
        String head = head(name);
        String words = words(head, width, BOLD_LETTER);
        return fit(head, width, true).equals(head) || words.isEmpty() ? fit(head, width, true) : words;
    }

    /** What a crop's name goes on with below its first line, in whole words: 'sweet', 'sprouts'; or nothing. */
    static String secondLine(String name, int width) {
        String first = fitCrop(name, width);
        if (first.equals(name) || first.endsWith("…")) {
            return "";
        }
        String rest = name.substring(first.length()).replaceAll("\\(.*", "").replaceAll("^[,/ ]+", "");
        return words(rest, width, LETTER);
    }

    /** As many whole words as fit, without an 'and' or a slash at the end. */
    private static String words(String text, int width, double letter) {
        String kept = text.strip();
        while (kept.length() * letter > width) {
            kept = kept.substring(0, Math.max(0, kept.lastIndexOf(' ')));
        }
        return kept.replaceAll(" (and|or|/)$", "");
    }

    /** The name without what follows a comma or bracket. */
    static String head(String cropName) {
        return cropName.split(",| \\(| / ", 2)[0];
    }

    /** A person's name: in full where it fits, else the first name with an initial, else the first name cut. */
    static String fitName(String name, int width) {
        int space = name.indexOf(' ');
        if (space < 0 || fit(name, width, false).equals(name)) {
            return fit(name, width, false);
        }
        String first = name.substring(0, space);
        String initialled = first + " " + name.substring(space + 1).strip().charAt(0) + ".";
        return fit(initialled, width, false).equals(initialled) ? initialled : fit(first, width, false);
    }
}
