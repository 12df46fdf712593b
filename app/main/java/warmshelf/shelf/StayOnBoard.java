package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A sowing lying on quarters of a place, with the words a board shows.
 *
 * @param firstQuarter 1 to 4
 * @param from the first day
 * @param to the day after the last day
 * @param kind 'tray', 'half-tray' or 'bag'
 * @param trial the way of a trial that it is; null: of none
 * @param mark what is marked on it for whoever reads the board
 */
public record StayOnBoard(
        UUID stayId,
        UUID sowingId,
        UUID placeId,
        int firstQuarter,
        int quarters,
        LocalDate from,
        LocalDate to,
        String cropName,
        String memberName,
        String stageWord,
        String kind,
        @Nullable TrialOnBoard trial,
        StayMark mark) {

    /** With nothing marked. */
    public StayOnBoard(
            UUID stayId,
            UUID sowingId,
            UUID placeId,
            int firstQuarter,
            int quarters,
            LocalDate from,
            LocalDate to,
            String cropName,
            String memberName,
            String stageWord,
            String kind,
            @Nullable TrialOnBoard trial) {
        this(
                stayId,
                sowingId,
                placeId,
                firstQuarter,
                quarters,
                from,
                to,
                cropName,
                memberName,
                stageWord,
                kind,
                trial,
                StayMark.NONE);
    }

    StayOnBoard with(StayMark other) {
        return new StayOnBoard(
                stayId,
                sowingId,
                placeId,
                firstQuarter,
                quarters,
                from,
                to,
                cropName,
                memberName,
                stageWord,
                kind,
                trial,
                other);
    }

    public boolean lies(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(to);
    }

    /** Something lies there already, so that its days cannot be changed any more. */
    public boolean isFixedOn(LocalDate today) {
        return !from.isAfter(today) && !stageWord.equals("planned") && !stageWord.equals("soaked");
    }

    /** The crop, with the way of a trial after it: 'Pepper, trial 3 way B'. */
    public String what() {
        return trial == null ? cropName : cropName + ", " + trial.words();
    }

    /** The crop without what follows a comma or a bracket. */
    public String shortCrop() {
        return ShortText.head(cropName);
    }

    /** For example 'half tray'. */
    public String kindWords() {
        return kind.replace('-', ' ');
    }

    /** For example 'left half'. */
    public String quarterWords() {
        return switch (quarters) {
            case 4 -> SAY.wholePlace();
            case 2 -> firstQuarter == 1 ? SAY.leftHalf() : SAY.rightHalf();
            default -> SAY.quarter(firstQuarter);
        };
    }
}
