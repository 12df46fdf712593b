package warmshelf.guide;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import warmshelf.crop.Handled;

/** What the guide tells of, in the order of a sowing; a step of the timeline has the same word here as there. */
public enum Topic {
    SEED_TEST("seed-test", Handled.SEED),
    CHILL("chill", Handled.SEED),
    SOAK("soak", Handled.SEED),
    SLIPS("slips"),
    LABELS("labels", Handled.SEED, Handled.YOUNG_PLANT),
    SOW("sow", Handled.SOWING, Handled.SEED),
    COVERING("covering", Handled.SEED),
    BOTTOM_HEAT("bottom-heat"),
    WATERING("watering"),
    FIRST_LOOK("first-look", Handled.SEED),
    DAMPING_OFF("damping-off"),
    PESTS("pests"),
    MOVE_TO_CELLS("move-to-cells", Handled.SEED),
    OFF_HEAT("off-heat"),
    LIGHT("light"),
    FIRST_FEED("first-feed"),
    THIN("thin", Handled.YOUNG_PLANT),
    STURDY("sturdy"),
    POT_ON("pot-on", Handled.YOUNG_PLANT),
    HARDEN_OFF("harden-off", Handled.OUTDOORS),
    PLANT_OUT("plant-out", Handled.OUTDOORS),
    ROW_COVER("row-cover"),
    DAY_LENGTH("day-length"),
    RIPE("ripe", Handled.HARVEST),
    SAVE_SEED("save-seed", Handled.HARVEST);

    private final String word;
    private final Set<Handled> handled;

    Topic(String word, Handled... handled) {
        this.word = word;
        this.handled = Set.of(handled);
    }

    /** What of a crop somebody has in the hands at it. */
    Set<Handled> handled() {
        return handled;
    }

    static Optional<Topic> find(String word) {
        return Arrays.stream(values()).filter(topic -> topic.word.equals(word)).findFirst();
    }

    static Topic named(String word) {
        return find(word).orElseThrow(() -> new IllegalArgumentException("no article is called '" + word + "'"));
    }

    static List<Topic> all() {
        return List.of(values());
    }

    /** Its word in addresses. */
    public String word() {
        return word;
    }

    public String title() {
        return Advice.fixed(file(), "title");
    }

    /** What its page tells, in a few words. */
    public String about() {
        return Advice.fixed(file(), "about");
    }

    /** Where its article stands among the texts. */
    String file() {
        return "articles/" + word;
    }
}
