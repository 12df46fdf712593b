package warmshelf.timeline;

import java.util.Map;
import warmshelf.guide.Advice;
import warmshelf.words.Units;

/**
 * Why a step falls on its days. It is put into words only where somebody reads it.
 *
 * @param file of the texts in which the words stand
 * @param section of that file
 * @param values the figures that led to the days, by the names that the section has for them
 * @param units those of the reader
 */
public record Reason(String file, String section, Map<String, ?> values, Units units) {
    public Reason {
        values = Map.copyOf(values);
    }

    /** In one or two plain sentences. */
    String words() {
        return Advice.in(units).say(file, section, values);
    }
}
