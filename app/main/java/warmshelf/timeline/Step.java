package warmshelf.timeline;

/** The steps of a sowing, in the order in which they happen. */
public enum Step {
    SOAK("soak", "Soak the seed"),
    SOW("sow", "Sow"),
    FIRST_LOOK("first-look", "First look"),
    MOVE_TO_CELLS("move-to-cells", "Move into cells"),
    OFF_HEAT("off-heat", "Off the heat"),
    LIGHT("light", "Under the light"),
    FIRST_FEED("first-feed", "First feed"),
    POT_ON("pot-on", "Pot on"),
    HARDEN_OFF("harden-off", "Begin hardening off"),
    PLANT_OUT("plant-out", "Plant out"),
    RIPE("ripe", "First harvest");

    private final String word;
    private final String title;

    Step(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** The step in the commands' answers. */
    public String word() {
        return word;
    }

    /** The step as a heading. */
    public String title() {
        return title;
    }
}
