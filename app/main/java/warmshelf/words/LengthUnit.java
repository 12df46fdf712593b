package warmshelf.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Lengths as a person reads them. Stored are millimetres. */
public enum LengthUnit {
    CENTIMETRES("cm", "centimetres", 10),
    INCHES("in", "inches", 25.4);

    private final String word;
    private final String inFull;
    private final double millimetres;

    LengthUnit(String word, String inFull, double millimetres) {
        this.word = word;
        this.inFull = inFull;
        this.millimetres = millimetres;
    }

    /** The unit with this word; empty where there is none. */
    public static Optional<LengthUnit> withWord(String word) {
        return Arrays.stream(values()).filter(unit -> unit.word.equals(word)).findFirst();
    }

    /** The words of all of them. */
    public static List<String> words() {
        return Arrays.stream(values()).map(LengthUnit::word).toList();
    }

    /** 'cm' or 'in', as the database and forms keep it. */
    public String word() {
        return word;
    }

    /** 'centimetres' or 'inches'. */
    public String inFull() {
        return inFull;
    }

    /** How many millimetres one of it is. */
    public double millimetres() {
        return millimetres;
    }
}
