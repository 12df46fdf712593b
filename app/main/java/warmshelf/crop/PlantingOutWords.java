package warmshelf.crop;

/** Days from the average last frost to planting out, in words. */
public final class PlantingOutWords {
    private PlantingOutWords() {}

    /** For example 'from 7 days before the average last frost to 7 days after it' or '7 days after the average last frost'. */
    public static String of(int first, int last) {
        String usual = fromFrost(first, "the average last frost");
        return first == last ? usual : "from %s to %s".formatted(usual, fromFrost(last, "it"));
    }

    private static String fromFrost(int days, String frost) {
        if (days == 0) {
            return frost;
        }
        return "%d days %s %s".formatted(Math.abs(days), days < 0 ? "before" : "after", frost);
    }
}
