package warmshelf.sowing;

import java.util.Arrays;
import java.util.List;

/** How far a sowing has come, in the order in which plants go through it. */
public enum SowingStage {
    PLANNED("planned"),
    /** Its seed lies cold and moist. */
    CHILLED("chilled"),
    SOAKED("soaked"),
    SOWN("sown"),
    /** Roots show in the bag. */
    SPROUTING("sprouting"),
    /** Pre-sprouted seed that lies in cells and is not up yet. */
    IN_CELLS("in-cells"),
    EMERGED("emerged"),
    UNDER_LIGHT("under-light"),
    FED("fed"),
    POTTED_ON("potted-on"),
    HARDENING_OFF("hardening-off"),
    PLANTED_OUT("planted-out"),
    GIVEN_UP("given-up"),
    /** Its season was closed and nobody had written down what became of it. */
    NOT_RECORDED("not-recorded"),
    WITHDRAWN("withdrawn");

    /** The words of the stages in which nothing is in compost or paper yet. */
    public static final List<String> BEFORE_SOWING = Arrays.stream(values())
            .filter(SowingStage::isBeforeSowing)
            .map(SowingStage::word)
            .toList();

    /** The words of the stages in which something can still be seen or done: named one by one, so that an index finds them. */
    public static final List<String> UNDER_WAY = Arrays.stream(values())
            .filter(stage -> !stage.isOver())
            .map(SowingStage::word)
            .toList();

    /** The words of the stages in which its seed is up, or was given up; before that more may still come. */
    static final List<String> PAST_EMERGENCE = Arrays.stream(values())
            .filter(SowingStage::isPastEmergence)
            .map(SowingStage::word)
            .toList();

    private final String word;

    SowingStage(String word) {
        this.word = word;
    }

    /** The word the database keeps. */
    public String word() {
        return word;
    }

    /** The word a page shows. */
    public String title() {
        return word.replace('-', ' ');
    }

    /** Nothing more is waited for. */
    public boolean isOver() {
        return this == PLANTED_OUT || this == GIVEN_UP || this == NOT_RECORDED || this == WITHDRAWN;
    }

    /** Not yet in compost or paper. */
    public boolean isBeforeSowing() {
        return this == PLANNED || this == CHILLED || this == SOAKED;
    }

    /** In compost or paper and nothing of it above ground. */
    public boolean isWaitingForSeed() {
        return this == SOWN || this == SPROUTING || this == IN_CELLS;
    }

    /** Its seed is up, or was given up. */
    boolean isPastEmergence() {
        return this != WITHDRAWN && compareTo(UNDER_LIGHT) >= 0;
    }

    /** How many of its seedlings lived is known. */
    boolean arePlantsCounted() {
        return this == HARDENING_OFF || this == PLANTED_OUT || this == GIVEN_UP;
    }

    /** The stage of that word. */
    public static SowingStage named(String word) {
        for (SowingStage stage : values()) {
            if (stage.word.equals(word)) {
                return stage;
            }
        }
        throw new IllegalArgumentException("no stage is called '" + word + "'");
    }
}
