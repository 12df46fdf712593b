package warmshelf.finding.trial;

import java.util.List;
import java.util.stream.Collectors;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/**
 * What a step would do to trials, told before it is taken. It may be taken all the same, by whoever was told.
 *
 * @param apart each two ways that would lie apart in warmth; none where no trial minds
 */
public record TrialWarnings(List<TrialWarmth> apart) {
    public static final TrialWarnings NONE = new TrialWarnings(List.of());

    private static final String FIELD = "warned";

    public TrialWarnings {
        apart = List.copyOf(apart);
    }

    public boolean isEmpty() {
        return apart.isEmpty();
    }

    /** In sentences, in a reader's units. */
    public List<String> words(Units units) {
        return apart.stream().map(each -> each.words(units)).toList();
    }

    /** What a form sends as 'warned' to say that these were shown; no text where there are none. */
    public String key() {
        return apart.stream()
                .map(each -> "%d%s%s-%s-%s-%s"
                        .formatted(
                                each.number(),
                                each.way(),
                                each.fellow(),
                                each.day(),
                                each.celsius(),
                                each.fellowCelsius()))
                .collect(Collectors.joining(","));
    }

    /** Whether whoever sent a form was told all of it, and nothing else since. */
    public boolean wereShownIn(FormReader form) {
        return isEmpty() || form.text(FIELD).equals(key());
    }
}
