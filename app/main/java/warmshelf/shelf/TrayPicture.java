package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import warmshelf.words.DayWords;

/**
 * A tray, half tray or bag as drawn on a rack.
 *
 * @param kind 'tray', 'half-tray' or 'bag'
 * @param lines what is written on it, cut to fit
 * @param words the same in full, for those who hear the page
 */
public record TrayPicture(UUID stayId, Quarters quarters, Box box, String kind, List<Line> lines, String words) {
    private static final int LINE = 15;
    private static final int MARGIN = 4;

    /** One line of writing; {@code strong} for the crop. */
    public record Line(int x, int y, String text, boolean strong) {}

    static TrayPicture of(StayOnBoard stay, Box place, String placeWords) {
        Quarters quarters = new Quarters(stay.firstQuarter(), stay.quarters());
        Box box = quarters.within(place).inset(2);
        String trial = stay.trial() == null ? "" : stay.trial().brief();
        List<String> texts = switch (stay.quarters()) {
            case 4 -> List.of(stay.cropName(), trial, stay.memberName(), stay.stageWord(), DayWords.leaves(stay.to()));
            case 2 -> half(stay, trial, box.width() - 2 * MARGIN);
            // two lines are all that a quarter has room for
            default -> List.of(stay.cropName(), trial.isEmpty() ? stay.memberName() : trial);
        };
        String words = "%s, %s, %s, %s, %s, %s %s"
                .formatted(
                        stay.what(),
                        stay.kindWords(),
                        stay.memberName(),
                        stay.stageWord(),
                        DayWords.leaves(stay.to()),
                        placeWords,
                        stay.quarterWords());
        return new TrayPicture(stay.stayId(), quarters, box, stay.kind(), lines(box, texts, stay.memberName()), words);
    }

    /** Five lines are all that a half tray has room for: where its trial or the rest of the crop's name needs one, how far it is goes. */
    private static List<String> half(StayOnBoard stay, String trial, int room) {
        String second = trial.isEmpty() ? ShortText.secondLine(stay.cropName(), room) : trial;
        return List.of(
                stay.cropName(),
                second,
                stay.memberName(),
                second.isEmpty() ? stay.stageWord() : "",
                SAY.leaves(),
                DayWords.day(stay.to()));
    }

    /** The first line is the crop; what has nothing to say takes no room. */
    private static List<Line> lines(Box box, List<String> all, String memberName) {
        List<String> texts = all.stream().filter(text -> !text.isEmpty()).toList();
        List<Line> lines = new ArrayList<>();
        int y = box.y() + (box.height() - texts.size() * LINE) / 2 + LINE - 3;
        for (String text : texts) {
            int room = box.width() - 2 * MARGIN;
            String fitted = lines.isEmpty()
                    ? ShortText.fitCrop(text, room)
                    : text.equals(memberName) ? ShortText.fitName(text, room) : ShortText.fit(text, room, false);
            lines.add(new Line(box.x() + MARGIN, y, fitted, lines.isEmpty()));
            y += LINE;
        }
        return lines;
    }
}
