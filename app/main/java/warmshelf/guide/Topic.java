package warmshelf.guide;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What the guide tells of, in the order of a sowing; a step of the timeline has the same word here as there. */
public enum Topic {
    SEED_TEST("seed-test"),
    SOAK("soak"),
    LABELS("labels"),
    SOW("sow"),
    COVERING("covering"),
    BOTTOM_HEAT("bottom-heat"),
    WATERING("watering"),
    FIRST_LOOK("first-look"),
    DAMPING_OFF("damping-off"),
    MOVE_TO_CELLS("move-to-cells"),
    OFF_HEAT("off-heat"),
    LIGHT("light"),
    FIRST_FEED("first-feed"),
    POT_ON("pot-on"),
    HARDEN_OFF("harden-off"),
    PLANT_OUT("plant-out"),
    RIPE("ripe");

    private final String word;

    Topic(String word) {
        this.word = word;
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
