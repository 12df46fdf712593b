package warmshelf.check;

import java.util.Optional;
import warmshelf.sowing.EntryStep;

/** What is due at a sowing or a mat. */
public enum CheckKind {
    SOAK("Soak the seed", EntryStep.SOAKED),
    SOW("Sow it", EntryStep.SOWN),
    BAG_LOOK("Look into the bag", EntryStep.LOOK),
    MOVE_TO_CELLS("Move sprouted seed to cells", EntryStep.MOVED_TO_CELLS),
    CELLS_LOOK("Look at the cells", EntryStep.LOOK),
    OFF_HEAT("Off the heat, under light", EntryStep.UNDER_LIGHT),
    LIGHT_LOOK("Look at the seedlings", EntryStep.LOOK),
    FIRST_FEED("First feed", EntryStep.FIRST_FEED),
    POT_ON("Pot on", EntryStep.POTTED_ON),
    HARDEN_OFF("Start hardening off", EntryStep.HARDENING_OFF),
    PLANT_OUT("Plant out", EntryStep.PLANTED_OUT),
    MAT_READING("Read the thermometer", EntryStep.READING);

    private final String title;
    private final EntryStep step;

    CheckKind(String title, EntryStep step) {
        this.title = title;
        this.step = step;
    }

    public String title() {
        return title;
    }

    /** The entry that ticks it. */
    public EntryStep step() {
        return step;
    }

    /** A daily look, as against a step that is done once. */
    public boolean isLook() {
        return step == EntryStep.LOOK;
    }

    /** The word of the how-to page that tells more of it. */
    public String guide() {
        return switch (this) {
            case SOAK -> "soak";
            case SOW -> "sow";
            case BAG_LOOK, CELLS_LOOK -> "first-look";
            case MOVE_TO_CELLS -> "move-to-cells";
            case OFF_HEAT -> "off-heat";
            case LIGHT_LOOK -> "light";
            case FIRST_FEED -> "first-feed";
            case POT_ON -> "pot-on";
            case HARDEN_OFF -> "harden-off";
            case PLANT_OUT -> "plant-out";
            case MAT_READING -> "bottom-heat";
        };
    }

    /** The step of the timeline that makes it due, where one does. */
    Optional<warmshelf.timeline.Step> timelineStep() {
        return switch (this) {
            case FIRST_FEED -> Optional.of(warmshelf.timeline.Step.FIRST_FEED);
            case POT_ON -> Optional.of(warmshelf.timeline.Step.POT_ON);
            case HARDEN_OFF -> Optional.of(warmshelf.timeline.Step.HARDEN_OFF);
            case PLANT_OUT -> Optional.of(warmshelf.timeline.Step.PLANT_OUT);
            default -> Optional.empty();
        };
    }

    /** The step of the timeline at which the same is handled, for its cautions; empty where nothing of a sowing is. */
    Optional<warmshelf.timeline.Step> handles() {
        return switch (this) {
            case SOAK -> Optional.of(warmshelf.timeline.Step.SOAK);
            case SOW -> Optional.of(warmshelf.timeline.Step.SOW);
            case BAG_LOOK, CELLS_LOOK -> Optional.of(warmshelf.timeline.Step.FIRST_LOOK);
            case MOVE_TO_CELLS -> Optional.of(warmshelf.timeline.Step.MOVE_TO_CELLS);
            case OFF_HEAT -> Optional.of(warmshelf.timeline.Step.OFF_HEAT);
            case LIGHT_LOOK -> Optional.of(warmshelf.timeline.Step.LIGHT);
            case MAT_READING -> Optional.empty();
            default -> timelineStep();
        };
    }
}
