package warmshelf.timeline;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import warmshelf.crop.Handled;
import warmshelf.guide.Advice;
import warmshelf.words.Units;

/** The steps of a sowing, in the order in which they happen. */
public enum Step {
    LAY_ROOTS("lay-roots"),
    CUT_SLIPS("cut-slips", Handled.YOUNG_PLANT),
    CHILL("chill", Handled.SEED),
    SOAK("soak", Handled.SEED),
    SOW("sow", Handled.SOWING, Handled.SEED),
    FIRST_LOOK("first-look", Handled.SEED),
    MOVE_TO_CELLS("move-to-cells", Handled.SEED),
    OFF_HEAT("off-heat"),
    /** In place of the group's light, where none is booked. */
    TAKE_HOME("take-home"),
    LIGHT("light"),
    THIN("thin", Handled.YOUNG_PLANT),
    FIRST_FEED("first-feed"),
    POT_ON("pot-on", Handled.YOUNG_PLANT),
    TRIM("trim", Handled.YOUNG_PLANT),
    PINCH("pinch", Handled.YOUNG_PLANT),
    HARDEN_OFF("harden-off", Handled.OUTDOORS),
    PLANT_OUT("plant-out", Handled.OUTDOORS),
    COVER_OFF("cover-off", Handled.OUTDOORS),
    RIPE("ripe", Handled.HARVEST);

    private final String word;
    private final Set<Handled> handled;

    Step(String word, Handled... handled) {
        this.word = word;
        this.handled = Set.of(handled);
    }

    /** What of the crop somebody has in the hands at it; nothing where only trays are carried. */
    public Set<Handled> handled() {
        return handled;
    }

    /** The step of that word; empty where none is called so. */
    public static Optional<Step> find(String word) {
        return Arrays.stream(values()).filter(step -> step.word.equals(word)).findFirst();
    }

    /** The step in the commands' answers. */
    public String word() {
        return word;
    }

    /** The word of the how-to page that tells of it. */
    public String guide() {
        return switch (this) {
            case LAY_ROOTS, CUT_SLIPS -> "slips";
            case TRIM, PINCH -> "thin";
            case TAKE_HOME -> "off-heat";
            case COVER_OFF -> "row-cover";
            default -> word;
        };
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
