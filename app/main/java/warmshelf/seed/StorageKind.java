package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a lot is kept, in plain words, and the temperature and seed moisture that stand for it.
 *
 * <p>The figures are our own and only common practice stands behind them. A household fridge holds 3 to 6 °C, and in a closed jar
 * seed keeps the moisture it went in with: 6 % for vegetable seed that was dried well. In an open packet seed settles with
 * the air of the room: about 7 % in a dry and cool one. A shed that heats up in summer ages its seed mostly on its warm days, so
 * its figure stands above the average of its year. The doubt about all this is part of {@link StorageShift}.
 */
public enum StorageKind {
    FRIDGE("fridge", SAY.inFridge(), new Conditions(5, 6)),
    CUPBOARD("cupboard", SAY.inCupboard(), new Conditions(18, 7)),
    SHED("shed", SAY.inShed(), new Conditions(22, 8)),
    UNKNOWN("unknown", SAY.storageNotKnown(), null),
    /** The lot has a temperature and moisture of its own. */
    OWN("own", SAY.measured(), null);

    private final String word;
    private final String words;
    // A record of two numbers.
    @SuppressWarnings("ImmutableEnumChecker")
    private final @Nullable Conditions conditions;

    StorageKind(String word, String words, @Nullable Conditions conditions) {
        this.word = word;
        this.words = words;
        this.conditions = conditions;
    }

    /** The word the database keeps. */
    public String word() {
        return word;
    }

    /** The words a page shows. */
    public String words() {
        return words;
    }

    Optional<Conditions> conditions() {
        return Optional.ofNullable(conditions);
    }

    /** The kind of that word. */
    public static StorageKind named(String word) {
        for (StorageKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no storage is called '" + word + "'");
    }

    /**
     * What seed is kept at.
     *
     * @param celsius from {@value #COLDEST} to {@value #WARMEST}
     * @param moisturePercent of the seed's fresh weight, from {@value #DRIEST} to {@value #DAMPEST}
     */
    public record Conditions(double celsius, double moisturePercent) {
        /** The reference page of the viability equation gives -20 °C as its lower end. */
        public static final int COLDEST = -20;
        /** The constants were measured from 0 to 50 °C (Ellis and Hong, 2007). */
        public static final int WARMEST = 50;
        /** Below about 5 % the equation's line no longer holds, says the same page. */
        public static final int DRIEST = 5;

        public static final int DAMPEST = 25;

        public Conditions {
            if (!(celsius >= COLDEST
                    && celsius <= WARMEST
                    && moisturePercent >= DRIEST
                    && moisturePercent <= DAMPEST)) {
                throw new IllegalArgumentException(
                        "the ageing of seed is not known at " + celsius + " °C and " + moisturePercent + " %");
            }
        }
    }
}
