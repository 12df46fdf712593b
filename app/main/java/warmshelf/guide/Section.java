package warmshelf.guide;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a page.
 *
 * @param heading empty for the part a page begins with
 * @param notes what to know, before the steps
 * @param steps what to do, in order
 */
public record Section(String heading, List<String> notes, List<String> steps, List<Comparison> comparisons) {
    public Section {
        notes = List.copyOf(notes);
        steps = List.copyOf(steps);
        comparisons = List.copyOf(comparisons);
    }

    static Section of(String heading) {
        return new Section(heading, List.of(), List.of(), List.of());
    }

    Section notes(String... more) {
        return new Section(heading, joined(notes, more), steps, comparisons);
    }

    Section steps(String... more) {
        return new Section(heading, notes, joined(steps, more), comparisons);
    }

    Section compare(Comparison... more) {
        return new Section(heading, notes, steps, joined(comparisons, more));
    }

    @SafeVarargs
    private static <T> List<T> joined(List<T> some, T... more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return all;
    }
}
