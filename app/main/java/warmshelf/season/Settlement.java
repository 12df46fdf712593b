package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import java.util.Arrays;
import java.util.Optional;

/** What a coordinator says became of a sowing when its season is closed. */
enum Settlement {
    PLANTED_OUT("planted-out", SAY.wasPlantedOut()),
    GIVEN_UP("given-up", SAY.nothingCame()),
    NOT_RECORDED("not-recorded", SAY.nobodyKnows()),
    WITHDRAWN("withdrawn", SAY.wasNeverSown()),
    /** It stays under way, as one of the season it was sown for. */
    GOES_ON("goes-on", SAY.goesOn());

    private final String word;
    private final String title;

    Settlement(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** The word that forms send. */
    public String word() {
        return word;
    }

    /** The words a page shows. */
    public String title() {
        return title;
    }

    static Optional<Settlement> named(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
    }
}
