package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;

/** The sentence for a crop that is not in the table, with those that may have been meant. */
final class UnknownCrop {
    private static final int OFFERED = 4;

    private UnknownCrop() {}

    static BadInput named(String id) {
        String typed = Given.shown(id).toLowerCase(Locale.ROOT);
        List<String> near = CropCatalogue.bundled().all().stream()
                .map(Crop::id)
                .sorted(Comparator.comparingInt(known -> distance(typed, known)))
                .limit(OFFERED)
                .toList();
        return new BadInput(SAY.noSuchCrop(Given.shown(id), String.join(", ", near)));
    }

    /** How many letters must be added, dropped or changed; nothing where one name holds the other. */
    private static int distance(String one, String other) {
        if (!one.isBlank() && (other.contains(one) || one.contains(other))) {
            return 0;
        }
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int changed = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[other.length()];
    }
}
