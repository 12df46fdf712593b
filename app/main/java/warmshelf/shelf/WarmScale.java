package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import warmshelf.words.Units;

/** The one warm scale: what a mat's set-point is called, everywhere. */
public enum WarmScale {
    COOL("cool", "cool", 18, 21),
    WARM("warm", "warm", 22, 25),
    HOT("hot", "hot", 26, 29),
    VERY_HOT("very hot", "very-hot", 30, 33);

    private final String word;
    private final String style;
    private final int lowC;
    private final int highC;

    WarmScale(String word, String style, int lowC, int highC) {
        this.word = word;
        this.style = style;
        this.lowC = lowC;
        this.highC = highC;
    }

    /** By the whole degree that a set-point counts as; below the scale is still cool, above it still very hot. */
    public static WarmScale of(double celsius) {
        for (WarmScale warmth : values()) {
            if (WholeDegree.of(celsius) <= warmth.highC) {
                return warmth;
            }
        }
        return VERY_HOT;
    }

    public String word() {
        return word;
    }

    /** Ending of the style class that gives its colour. */
    public String style() {
        return style;
    }

    /** The lowest whole degree, as a reader of these units sets a mat, that is called so. */
    int first(Units units) {
        int degree = (int) units.degrees(lowC);
        while (this != COOL && of(units.celsiusOf((double) degree - 1)) == this) {
            degree--;
        }
        return degree;
    }

    /** The highest one. */
    int last(Units units) {
        int degree = (int) units.degrees(highC);
        while (of(units.celsiusOf((double) degree + 1)) == this) {
            degree++;
        }
        return degree;
    }

    /** For example '71 to 77 °F'; the hottest step has no upper end. */
    public String range(Units units) {
        return this == VERY_HOT
                ? SAY.degreesAndAbove(first(units), units.degree())
                : SAY.degreesFromTo(first(units), last(units), units.degree());
    }
}
