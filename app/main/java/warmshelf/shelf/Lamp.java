package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The lamps over a shelf, as far as somebody has said.
 *
 * @param hours for which they are on each day; null where nobody has said
 * @param timer whether a timer switches them; null where nobody has said
 */
public record Lamp(
        Kind kind, @Nullable Integer hours, @Nullable Boolean timer) {
    public static final Lamp NOT_KNOWN = new Lamp(Kind.NOT_KNOWN, null, null);

    /** What decides how near to the leaves a lamp hangs. */
    public enum Kind {
        FLUORESCENT("fluorescent", SAY.fluorescent()),
        LED("led", SAY.led()),
        OTHER("other", SAY.otherLamps()),
        NOT_KNOWN("", "");

        private final String word;
        private final String words;

        Kind(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /** As forms and tables have it; empty where nobody has said. */
        public String word() {
            return word;
        }

        /** As a table keeps it: null where nobody has said. */
        @Nullable
        String kept() {
            return this == NOT_KNOWN ? null : word;
        }

        /** The kind of that word; not known for none. */
        public static Kind named(@Nullable String word) {
            String known = word == null ? "" : word;
            return Arrays.stream(values())
                    .filter(kind -> kind.word.equals(known))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no lamp is called '" + known + "'"));
        }
    }

    /** For example 'LED lamps, 16 hours a day, on a timer'; empty where nothing is known. */
    public String words() {
        List<String> said = new ArrayList<>();
        if (kind != Kind.NOT_KNOWN) {
            said.add(kind.words);
        }
        if (hours != null) {
            said.add(SAY.hoursADay(hours));
        }
        if (timer != null) {
            said.add(timer ? SAY.onATimer() : SAY.byHand());
        }
        return String.join(", ", said);
    }
}
