package warmshelf.check;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.guide.Advice;
import warmshelf.sowing.EntryStep;
import warmshelf.timeline.Step;

/** What is due at a sowing or a mat. */
public enum CheckKind {
    CHILL("chill", EntryStep.CHILLED),
    CHILL_LOOK("chill-look", EntryStep.LOOK),
    SOAK("soak", EntryStep.SOAKED),
    SOW("sow", EntryStep.SOWN),
    BAG_LOOK("first-look", Method.BAG, EntryStep.LOOK),
    MOVE_TO_CELLS("move-to-cells", EntryStep.MOVED_TO_CELLS),
    CELLS_LOOK("first-look", Method.CELLS, EntryStep.LOOK),
    OFF_HEAT("off-heat", EntryStep.UNDER_LIGHT),
    TAKE_HOME("take-home", EntryStep.TAKEN_HOME),
    LIGHT_LOOK("light", EntryStep.LOOK),
    FIRST_FEED("first-feed", EntryStep.FIRST_FEED),
    POT_ON("pot-on", EntryStep.POTTED_ON),
    TRIM("trim", EntryStep.TRIMMED),
    PINCH("pinch", EntryStep.TRIMMED),
    HARDEN_OFF("harden-off", EntryStep.HARDENING_OFF),
    PLANT_OUT("plant-out", EntryStep.PLANTED_OUT),
    MAT_READING("mat-reading", EntryStep.READING);

    private final String part;
    private final @Nullable Method method;
    private final EntryStep step;

    CheckKind(String part, EntryStep step) {
        this(part, null, step);
    }

    CheckKind(String part, @Nullable Method method, EntryStep step) {
        this.part = part;
        this.method = method;
        this.step = step;
    }

    /** The file of the texts that tells of it. */
    String file() {
        return Advice.stepFile(part);
    }

    /**
     * A section of its text. What lies in cells is looked at as such, though it was begun in a bag.
     *
     * @param begun how the sowing was begun
     */
    String section(String section, Method begun) {
        return Advice.section(file(), section, (method == null ? begun : method).where());
    }

    public String title() {
        return Advice.fixed(file(), method == null ? "check" : "check " + method.where());
    }

    /** What to mind at it besides the cautions that other steps share; empty where nothing is. */
    Optional<String> care() {
        return Advice.has(file(), "care") ? Optional.of(Advice.fixed(file(), "care")) : Optional.empty();
    }

    /** The entry that ticks it. */
    public EntryStep step() {
        return step;
    }

    /** Whether each seedling is in a hand at it, so that its grower sees how many are left over. */
    public boolean isWhenSeedlingsAreLeftOver() {
        return this == MOVE_TO_CELLS || this == POT_ON || this == PLANT_OUT;
    }

    /** A daily look, as against a step that is done once. */
    public boolean isLook() {
        return step == EntryStep.LOOK;
    }

    /** The word of the how-to page that tells more of it. */
    public String guide() {
        return switch (this) {
            case MAT_READING -> "bottom-heat";
            case CHILL_LOOK -> "chill";
            case TAKE_HOME -> "off-heat";
            case TRIM, PINCH -> "thin";
            default -> part;
        };
    }

    /** The step of the timeline that makes it due, where one does. */
    Optional<Step> timelineStep() {
        return switch (this) {
            case FIRST_FEED -> Optional.of(Step.FIRST_FEED);
            case POT_ON -> Optional.of(Step.POT_ON);
            case TRIM -> Optional.of(Step.TRIM);
            case PINCH -> Optional.of(Step.PINCH);
            case HARDEN_OFF -> Optional.of(Step.HARDEN_OFF);
            case PLANT_OUT -> Optional.of(Step.PLANT_OUT);
            default -> Optional.empty();
        };
    }

    /** The step of the timeline at which the same is handled, for its cautions; empty where nothing of a sowing is. */
    Optional<Step> handles() {
        return Step.find(part);
    }
}
