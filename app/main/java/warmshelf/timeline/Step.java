package warmshelf.timeline;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import warmshelf.guide.Advice;
import warmshelf.words.Units;

/** The steps of a sowing, in the order in which they happen. */
public enum Step {
    SOAK("soak"),
    SOW("sow"),
    FIRST_LOOK("first-look"),
    MOVE_TO_CELLS("move-to-cells"),
    OFF_HEAT("off-heat"),
    LIGHT("light"),
    FIRST_FEED("first-feed"),
    POT_ON("pot-on"),
    HARDEN_OFF("harden-off"),
    PLANT_OUT("plant-out"),
    RIPE("ripe");

    private final String word;

    Step(String word) {
        this.word = word;
    }

    /** The step of that word; empty where none is called so. */
    public static Optional<Step> find(String word) {
        return Arrays.stream(values()).filter(step -> step.word.equals(word)).findFirst();
    }

    /** The step in the commands' answers. */
    public String word() {
        return word;
    }

    /** The step as a heading. */
    public String title() {
        return Advice.fixed(file(), "title");
    }

    /** The file of the texts that tells of it. */
    String file() {
        return Advice.stepFile(word);
    }

    /** A section of its text that gives the reason for its days. */
    Reason why(String section, Map<String, ?> values, Units units) {
        return new Reason(file(), section, values, units);
    }
}
