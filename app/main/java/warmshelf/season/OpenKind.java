package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import java.util.List;
import warmshelf.sowing.SowingStage;

/** How far sowings had come that are not over when their season is closed. */
enum OpenKind {
    OUTSIDE("outside", SAY.hardeningOff()),
    GROWING("growing", SAY.underLight()),
    COMING_UP("coming-up", SAY.sownAndNoMore()),
    /** It had a place, and nobody noted that it was sown. */
    HAD_A_PLACE("had-a-place", SAY.hadAPlace()),
    /** It asked for no place, or got none. */
    NOT_SOWN("not-sown", SAY.notSown());

    private final String word;
    private final String title;

    OpenKind(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** The word that names its field in forms. */
    public String word() {
        return word;
    }

    /** The heading a page shows. */
    public String title() {
        return title;
    }

    /** What can have become of it, the usual first. */
    public List<Settlement> settlements() {
        return switch (this) {
            case OUTSIDE, GROWING ->
                List.of(Settlement.PLANTED_OUT, Settlement.NOT_RECORDED, Settlement.GIVEN_UP, Settlement.GOES_ON);
            case COMING_UP ->
                List.of(Settlement.NOT_RECORDED, Settlement.GIVEN_UP, Settlement.PLANTED_OUT, Settlement.GOES_ON);
            case HAD_A_PLACE -> List.of(Settlement.NOT_RECORDED, Settlement.WITHDRAWN);
            case NOT_SOWN -> List.of(Settlement.WITHDRAWN, Settlement.NOT_RECORDED);
        };
    }

    /** What most likely became of it; before plants go out, that it goes on where it can. */
    Settlement usual(boolean early) {
        return early && settlements().contains(Settlement.GOES_ON)
                ? Settlement.GOES_ON
                : settlements().get(0);
    }

    /**
     * The kind of a sowing that is not over.
     *
     * @param hadPlace whether its days on a place had begun
     */
    static OpenKind of(SowingStage stage, boolean hadPlace) {
        if (stage.isBeforeSowing()) {
            return hadPlace ? HAD_A_PLACE : NOT_SOWN;
        }
        if (stage == SowingStage.HARDENING_OFF) {
            return OUTSIDE;
        }
        return stage.isWaitingForSeed() || stage == SowingStage.EMERGED ? COMING_UP : GROWING;
    }
}
