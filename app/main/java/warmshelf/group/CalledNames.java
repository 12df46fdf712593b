package warmshelf.group;

import java.text.BreakIterator;
import java.util.ArrayList;
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
                everyone.stream().collect(Collectors.groupingBy(each -> firstKey(each.name())));
        Map<UUID, String> called = new HashMap<>();
        byFirst.values().forEach(sharing -> tellApart(sharing, called));
        return called;
    }

    /** The key of the first word, which decides from whom somebody has to be told. */
    static String firstKey(String name) {
        return Member.key(beginning(name, 0));
    }

    /** Gives each of those who share a first name the fewest letters that tell them from the others, one letter more at a time. */
    private static void tellApart(List<Named> sharing, Map<UUID, String> called) {
        List<Named> left = new ArrayList<>();
        for (Named each : sharing) {
            if (each.erased()) {
                called.put(each.id(), each.name());
            } else {
                left.add(each);
            }
        }
        for (int letters = 0; !left.isEmpty(); letters++) {
            Beginnings beginnings = Beginnings.of(sharing, letters);
            List<Named> alike = new ArrayList<>();
            for (Named each : left) {
                if (letters >= signs(last(each.name()))) {
                    called.put(each.id(), tidy(each.name()));
                } else if (beginnings.tell(each)) {
                    called.put(each.id(), beginning(each.name(), letters));
                } else {
                    alike.add(each);
                }
            }
            left = alike;
        }
    }

    /**
     * How many of those who share a first name begin alike.
     *
     * @param all of them, from whom somebody who has left is told
     * @param counting those from whom somebody present is told
     */
    private record Beginnings(int letters, Map<String, Integer> all, Map<String, Integer> counting) {
        static Beginnings of(List<Named> sharing, int letters) {
            Map<String, Integer> all = new HashMap<>();
            Map<String, Integer> counting = new HashMap<>();
            for (Named each : sharing) {
                String seen = seen(beginning(each.name(), letters));
                all.merge(seen, 1, Integer::sum);
                if (counts(each)) {
                    counting.merge(seen, 1, Integer::sum);
                }
            }
            return new Beginnings(letters, all, counting);
        }

        /** Whether nobody else begins so. */
        boolean tell(Named person) {
            String seen = seen(beginning(person.name(), letters));
            return (person.present() ? counting : all).getOrDefault(seen, 0) == 1;
        }

        private static boolean counts(Named person) {
            return person.present() || last(person.name()).isEmpty();
        }
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

    /** As a reader sees it, who hardly sees the full stop: 'Ana Roj.' and 'Ana Roj' are alike. */
    private static String seen(String beginning) {
        return Member.key(beginning.replaceAll("\\.$", ""));
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
