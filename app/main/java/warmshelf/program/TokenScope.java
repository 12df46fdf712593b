package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** One thing that a token lets a script do; the words are what people tick, and none is ticked beforehand. */
public enum TokenScope {
    ROUND("round:read", SAY.readRound()),
    TICKS("round:write", SAY.writeRound()),
    READINGS("readings:write", SAY.writeReadings()),
    NIGHTS("nights:write", SAY.writeNights()),
    SOWINGS("sowings:read", SAY.readSowings()),
    STAYS("stays:read", SAY.readStays()),
    LOTS("lots:read", SAY.readLots()),
    METRICS("metrics:read", SAY.readMetrics());

    private final String word;
    private final String about;

    TokenScope(String word, String about) {
        this.word = word;
        this.about = about;
    }

    /** As it is written in answers and in the database. */
    public String word() {
        return word;
    }

    /** What it lets a script do, in a line. */
    public String about() {
        return about;
    }

    /** The name of its box on the page. */
    public String field() {
        return word.replace(':', '-');
    }

    static String stored(Collection<TokenScope> scopes) {
        return scopes.stream().sorted().map(TokenScope::word).collect(Collectors.joining(" "));
    }

    /** Those of a stored text; a word that this program does not know opens nothing. */
    static Set<TokenScope> parse(String stored) {
        Set<String> words = Set.of(stored.split(" "));
        Set<TokenScope> scopes = EnumSet.noneOf(TokenScope.class);
        Arrays.stream(values()).filter(scope -> words.contains(scope.word)).forEach(scopes::add);
        return scopes;
    }
}
