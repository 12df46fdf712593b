package warmshelf.seed;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Whether a name is what somebody meant who cannot spell it: without accents and capitals, and with a slip or two. */
public final class Spelling {
    // One slip in a word of four letters or more, two from seven on; in shorter words a slip makes another word.
    private static final int LETTERS_FOR_ONE = 4;
    private static final int LETTERS_FOR_TWO = 7;
    private static final LevenshteinDistance SLIPS = new LevenshteinDistance(2);

    private Spelling() {}

    /** Whether each word typed is, or nearly is, a word of the name or the beginning of one. */
    public static boolean meant(String typed, String name) {
        List<String> words = words(typed);
        List<String> parts = words(name);
        return !words.isEmpty()
                && words.stream().allMatch(word -> parts.stream().anyMatch(part -> near(word, part)));
    }

    private static boolean near(String word, String part) {
        if (part.startsWith(word)) {
            return true;
        }
        int allowed = word.length() >= LETTERS_FOR_TWO ? 2 : word.length() >= LETTERS_FOR_ONE ? 1 : 0;
        int slips = SLIPS.apply(word, part);
        return slips >= 0 && slips <= allowed;
    }

    private static List<String> words(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
        return Arrays.stream(plain.split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
