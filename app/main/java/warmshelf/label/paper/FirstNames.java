package warmshelf.label.paper;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/** People by their first names, as long as that tells them apart. */
public final class FirstNames {
    private FirstNames() {}

    /**
     * The forms of a person's name on a label, the longest first: 'Tom', or 'Tom O.' where the group has another Tom, or the whole
     * name where it has another 'Tom O.' too.
     *
     * @param everyone in the group, this person or not
     */
    public static List<String> forms(String name, Collection<String> everyone) {
        String first = first(name);
        List<String> same = everyone.stream()
                .filter(other -> !other.equals(name) && first(other).equalsIgnoreCase(first))
                .toList();
        if (same.isEmpty()) {
            return shortened(first);
        }
        String initial = initial(name);
        boolean told = same.stream().noneMatch(other -> initial(other).equalsIgnoreCase(initial));
        return told ? List.of(initial) : shortened(name.strip());
    }

    private static List<String> shortened(String name) {
        return TellingForms.forms(name, "", List.of());
    }

    private static String first(String name) {
        return words(name).get(0);
    }

    private static String initial(String name) {
        List<String> words = words(name);
        if (words.size() == 1) {
            return name.strip();
        }
        String last = words.get(words.size() - 1);
        return words.get(0) + " " + last.substring(0, last.offsetByCodePoints(0, 1)) + ".";
    }

    private static List<String> words(String name) {
        return Arrays.asList(name.strip().split("\\s+"));
    }
}
