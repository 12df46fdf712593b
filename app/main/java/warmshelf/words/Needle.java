package warmshelf.words;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What somebody typed to find something: parts of words, in any order, capitals and accents left out of account. */
public final class Needle {
    private static final String MARKS = "\\p{M}";

    private final List<String> parts;

    private Needle(List<String> parts) {
        this.parts = parts;
    }

    public static Needle of(String typed) {
        return new Needle(Arrays.stream(plain(typed).split("\\s+"))
                .filter(part -> !part.isEmpty())
                .toList());
    }

    public boolean isEmpty() {
        return parts.isEmpty();
    }

    /** Whether each part stands in one of some texts; nothing typed is in all of them. */
    public boolean isIn(String... texts) {
        List<String> plain = Stream.of(texts).map(Needle::plain).toList();
        return parts.stream().allMatch(part -> plain.stream().anyMatch(text -> text.contains(part)));
    }

    /** Letters as they are compared; what is plain already costs nothing. */
    private static String plain(String text) {
        String small = text.toLowerCase(Locale.ROOT);
        return small.chars().allMatch(letter -> letter < 0x80)
                ? small
                : Normalizer.normalize(small, Normalizer.Form.NFKD).replaceAll(MARKS, "");
    }
}
