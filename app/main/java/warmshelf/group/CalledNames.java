package warmshelf.group;

import java.text.BreakIterator;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** What people are called before other members: by their first names, as long as that tells them apart. */
public final class CalledNames {
    private CalledNames() {}

    /**
     * Somebody to be told from others.
     *
     * @param present whether they belong to the group now; somebody who has left makes nobody's name longer but their own, unless
     *     they have one word only, to which nothing can be added
     * @param erased whether the name is a word for anybody, which says nothing
     */
    public record Named(UUID id, String name, boolean present, boolean erased) {}

    /** What each is called: 'Tom', or 'Tom O.' where the group has another Tom, or 'Tom Ok.' where it has another 'Tom O.' too. */
    public static Map<UUID, String> of(Collection<Named> everyone) {
        Map<String, List<Named>> byFirst =
                everyone.stream().collect(Collectors.groupingBy(each -> Member.key(beginning(each.name(), 0))));
        Map<UUID, String> called = new HashMap<>();
        byFirst.values().forEach(sharing -> sharing.forEach(each -> called.put(each.id(), called(each, sharing))));
        return called;
    }

    private static String called(Named person, List<Named> sharing) {
        List<String> others = sharing.stream()
                .filter(other -> !other.id().equals(person.id()))
                .filter(other -> other.present()
                        || !person.present()
                        || last(other.name()).isEmpty())
                .map(Named::name)
                .toList();
        return person.erased() ? person.name() : shortest(person.name(), others);
    }

    private static String shortest(String name, List<String> others) {
        int whole = signs(last(name));
        for (int letters = 0; letters < whole; letters++) {
            int said = letters;
            if (others.stream().noneMatch(other -> same(beginning(other, said), beginning(name, said)))) {
                return beginning(name, said);
            }
        }
        return tidy(name);
    }

    /** The first word with so many letters of the last: 'Tom', 'Tom O.', 'Tom Ok.'. */
    private static String beginning(String name, int letters) {
        String first = tidy(name).split(" ", 2)[0];
        String last = last(name);
        if (letters == 0 || last.isEmpty()) {
            return first;
        }
        return first + " " + (letters < signs(last) ? firstSigns(last, letters) + "." : last);
    }

    /** The last of several words; empty where there is one only. */
    private static String last(String name) {
        String tidy = tidy(name);
        int space = tidy.lastIndexOf(' ');
        return space < 0 ? "" : tidy.substring(space + 1);
    }

    private static String tidy(String name) {
        return name.strip().replaceAll("\\s+", " ");
    }

    /** Whether two are alike for a reader, who hardly sees the full stop: 'Ana Roj.' and 'Ana Roj'. */
    private static boolean same(String one, String other) {
        return Member.key(one.replaceAll("\\.$", "")).equals(Member.key(other.replaceAll("\\.$", "")));
    }

    private static int signs(String word) {
        BreakIterator signs = signsOf(word);
        int count = 0;
        while (signs.next() != BreakIterator.DONE) {
            count++;
        }
        return count;
    }

    private static String firstSigns(String word, int count) {
        return word.substring(0, signsOf(word).next(count));
    }

    /** Letters with the marks that join them count as one sign. */
    private static BreakIterator signsOf(String word) {
        BreakIterator signs = BreakIterator.getCharacterInstance(Locale.ROOT);
        signs.setText(word);
        return signs;
    }
}
