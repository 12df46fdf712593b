package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import warmshelf.crop.Method;

/** What a sowing lies in, by the quarters of a place that it takes. */
public enum Container {
    TRAY("tray", SAY.aWholeTray(), 4),
    HALF_TRAY("half-tray", SAY.aHalfTray(), 2),
    BAG("bag", SAY.aPaperBag(), 1);

    private final String word;
    private final String words;
    private final int quarters;

    Container(String word, String words, int quarters) {
        this.word = word;
        this.words = words;
        this.quarters = quarters;
    }

    public String word() {
        return word;
    }

    public String words() {
        return words;
    }

    public int quarters() {
        return quarters;
    }

    /** The containers that go with a method. */
    public static List<Container> of(Method method) {
        return method == Method.BAG ? List.of(BAG) : List.of(HALF_TRAY, TRAY);
    }

    /** The container of that word. */
    public static Container named(String word) {
        for (Container container : values()) {
            if (container.word.equals(word)) {
                return container;
            }
        }
        throw new IllegalArgumentException("a container is a tray, half-tray or bag, was '" + word + "'");
    }
}
