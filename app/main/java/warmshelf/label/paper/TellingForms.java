package warmshelf.label.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Shorter forms of a name that still tell it from others. Words that say nothing go first, then those that others share, then the
 * rest from the end; a single word is at last shortened in its middle, where fewest people look, and with the sign that says so.
 */
public final class TellingForms {
    private static final Set<String> SAY_NOTHING =
            Set.of("f1", "f2", "hybrid", "organic", "seed", "seeds", "the", "variety");
    private static final int LONGEST_WORD = 12;
    private static final int BEGINNING = 7;
    private static final int END = 3;

    private TellingForms() {}

    /**
     * The forms of a name, from the whole to the shortest.
     *
     * @param known words that the label says anyway, such as the crop's
     * @param others names from which it is to be told
     */
    public static List<String> forms(String name, String known, Collection<String> others) {
        Set<String> forms = new LinkedHashSet<>();
        String whole = name.strip().replaceAll("\\s+", " ");
        add(forms, whole);
        add(forms, whole.replaceAll("\\s*\\([^)]*\\)", "").replaceAll("['‘’\"“”]", ""));
        List<String> words = new ArrayList<>(Arrays.asList(last(forms).split(" ")));
        Set<String> shared =
                words(others.stream().filter(other -> !other.equals(name)).toList());
        drop(forms, words, SAY_NOTHING);
        drop(forms, words, words(List.of(known)));
        drop(forms, words, shared);
        while (words.size() > 1) {
            words.remove(words.size() - 1);
            add(forms, String.join(" ", words));
        }
        add(forms, inTheMiddle(last(forms)));
        return List.copyOf(forms);
    }

    /** The forms of what a person is called; an initial is there to tell two apart, and stays. */
    public static List<String> person(String called) {
        return called.endsWith(".") ? List.of(called) : forms(called, "", List.of());
    }

    /** The forms of a crop's name, of which what stands after a comma or in brackets is said last. */
    public static List<String> crop(String name) {
        Set<String> forms = new LinkedHashSet<>();
        add(forms, name);
        add(forms, name.replaceAll("\\s*[,(].*", ""));
        add(forms, inTheMiddle(last(forms).split(" ", 2)[0]));
        return List.copyOf(forms);
    }

    private static void drop(Set<String> forms, List<String> words, Set<String> dropped) {
        List<String> left =
                words.stream().filter(word -> !dropped.contains(bare(word))).toList();
        if (!left.isEmpty() && left.size() < words.size()) {
            words.clear();
            words.addAll(left);
            add(forms, String.join(" ", words));
        }
    }

    private static Set<String> words(Collection<String> names) {
        Set<String> words = new LinkedHashSet<>();
        names.forEach(name ->
                Arrays.stream(name.split("[\\s,·]+")).map(TellingForms::bare).forEach(words::add));
        words.remove("");
        return words;
    }

    private static String bare(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("^\\p{Punct}+|\\p{Punct}+$", "");
    }

    private static String last(Set<String> forms) {
        return new ArrayList<>(forms).get(forms.size() - 1);
    }

    private static void add(Set<String> forms, String form) {
        String tidy = form.strip().replaceAll("[,·]+$", "");
        if (!tidy.isEmpty()) {
            forms.add(tidy);
        }
    }

    /** For example 'Bundesg…gen', by whole signs; letters that only join others stay with them. */
    private static String inTheMiddle(String word) {
        int[] signs = word.codePoints().toArray();
        if (signs.length <= LONGEST_WORD) {
            return word;
        }
        int begin = BEGINNING;
        while (begin > 1 && joins(signs[begin])) {
            begin--;
        }
        int end = signs.length - END;
        while (end < signs.length - 1 && joins(signs[end])) {
            end++;
        }
        return new String(signs, 0, begin) + "…" + new String(signs, end, signs.length - end);
    }

    private static boolean joins(int sign) {
        int type = Character.getType(sign);
        return type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || type == Character.ENCLOSING_MARK
                || type == Character.FORMAT;
    }
}
