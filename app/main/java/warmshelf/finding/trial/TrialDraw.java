package warmshelf.finding.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * What chance decided for a block: which seed goes to which way, and in which order the ways lie. Whoever knows the number can make
 * the same draw again: {@link Random} of that number shuffles first the seeds' letters, written way after way, then the ways'.
 *
 * @param number from which it was made
 * @param dealt the letter of the way for each seed, in the order in which they come out of the packet
 * @param laidOut the letters of the ways in the order in which they are laid, from the left
 */
public record TrialDraw(int number, String dealt, String laidOut) {
    private static final int TO_A_LINE = 10;

    static TrialDraw of(int number, List<String> ways, int seedsEach) {
        Random random = new Random(number);
        List<String> seeds = new ArrayList<>();
        ways.forEach(way -> seeds.addAll(Collections.nCopies(seedsEach, way)));
        Collections.shuffle(seeds, random);
        List<String> places = new ArrayList<>(ways);
        Collections.shuffle(places, random);
        return new TrialDraw(number, String.join("", seeds), String.join("", places));
    }

    /** The seeds' letters in tens, as people count them out. */
    public List<String> tens() {
        List<String> tens = new ArrayList<>();
        for (int from = 0; from < dealt.length(); from += TO_A_LINE) {
            tens.add(dealt.substring(from, Math.min(dealt.length(), from + TO_A_LINE)));
        }
        return tens;
    }

    /** The ways' letters with commas, from the left. */
    public String places() {
        return String.join(", ", laidOut.split(""));
    }
}
