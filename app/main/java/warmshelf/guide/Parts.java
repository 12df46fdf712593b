package warmshelf.guide;

import java.util.Map;

/** Sections of the steps' files, quoted within other texts: what is said of a step in several places stands in one. */
public final class Parts {
    private final Advice advice;
    private final Map<String, ?> values;

    Parts(Advice advice, Map<String, ?> values) {
        this.advice = advice;
        this.values = values;
    }

    /** A section of a step's file, with the same values as the text that quotes it. */
    public String of(String step, String section) {
        return advice.say(Advice.stepFile(step), section, values);
    }
}
