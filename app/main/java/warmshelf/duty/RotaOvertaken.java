package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.util.List;
import java.util.stream.Collectors;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/**
 * Somebody else has changed the rota since it was shown.
 *
 * @param turns those that were changed; at least one
 */
record RotaOvertaken(List<Turn> turns) implements Message {
    RotaOvertaken {
        turns = List.copyOf(turns);
    }

    @Override
    public String words(Units units) {
        return turns.stream().map(RotaOvertaken::words).collect(Collectors.joining(" "));
    }

    /** The same of one of them. */
    static String words(Turn turn) {
        return SAY.lineOvertaken(DayWords.day(turn.day()));
    }
}
