package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

/** Days from the average last frost to planting out, in words. */
public final class PlantingOutWords {
    private PlantingOutWords() {}

    /** For example 'from 7 days before the average last frost to 7 days after it' or '7 days after the average last frost'. */
    public static String of(int first, int last) {
        String usual = fromFrost(first, SAY.averageLastFrost());
        return first == last ? usual : SAY.fromTo(usual, fromFrost(last, SAY.thatFrost()));
    }

    private static String fromFrost(int days, String frost) {
        if (days == 0) {
            return frost;
        }
        return days < 0 ? SAY.daysBefore(-days, frost) : SAY.daysAfter(days, frost);
    }
}
