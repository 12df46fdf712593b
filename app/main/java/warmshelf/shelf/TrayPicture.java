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
    /** A sign with the space after it. */
    private static final int SIGN = 10;

    /**
     * One line of writing.
     *
     * @param strong it is the crop
     * @param upwards written from the front to the back, as on a book's spine
     */
    public record Line(int x, int y, String text, boolean strong, boolean upwards) {}

    static TrayPicture of(StayOnBoard stay, Box place, String placeWords) {
        Quarters quarters = new Quarters(stay.firstQuarter(), stay.quarters());
        Box box = quarters.within(place).inset(2);
        String trial = stay.trial() == null ? "" : stay.trial().brief();
        String leaves = SAY.leavesOn(DayWords.day(stay.to()));
        String whose = trial.isEmpty() ? stay.memberName() : trial;
        List<String> texts = switch (stay.quarters()) {
            case 4 ->
                List.of(
                        stay.cropName(),
                        trial.isEmpty() ? ShortText.secondLine(stay.cropName(), box.width() - 2 * MARGIN) : trial,
                        stay.memberName(),
                        stay.stageWord(),
                        leaves);
            case 2 -> List.of(stay.cropName(), whose, SAY.leavesOn(DayWords.date(stay.to())));
            // two short lines are all that a quarter has room for
            default ->
                List.of(
                        stay.cropName(),
                        stay.trial() == null ? stay.memberName() : stay.trial().briefest());
        };
        String words = "%s, %s, %s, %s, %s, %s %s"
                .formatted(
                        stay.what(),
                        stay.kindWords(),
                        stay.memberName(),
                        stay.stageWord(),
                        DayWords.leaves(stay.to()),
                        placeWords,
                        stay.quarterWords() + stay.mark().words());
        return new TrayPicture(stay.stayId(), quarters, box, stay.kind(), lines(box, texts, stay), words);
    }

    /** The first line is the crop; what has nothing to say takes no room. A half tray is too narrow for words across. */
    private static List<Line> lines(Box box, List<String> all, StayOnBoard stay) {
        int quarters = stay.quarters();
        List<String> texts = all.stream().filter(text -> !text.isEmpty()).toList();
        boolean upwards = quarters == 2;
        int room = (upwards ? box.height() : box.width()) - 2 * MARGIN - (quarters == 1 ? MARGIN : 0);
        int start = ((upwards ? box.width() : box.height()) - texts.size() * LINE) / 2 + LINE - 3;
        List<Line> lines = new ArrayList<>();
        for (String text : texts) {
            int along = start + lines.size() * LINE;
            lines.add(new Line(
                    box.x() + (upwards ? along : MARGIN),
                    box.y() + (upwards ? box.height() - MARGIN : along),
                    fitted(text, room, lines.isEmpty(), stay),
                    lines.isEmpty(),
                    upwards));
        }
        return lines;
    }

    /** The signs of a mark stand before the crop, which takes the room that they leave. */
    private static String fitted(String text, int room, boolean crop, StayOnBoard stay) {
        if (crop) {
            String signs = stay.mark().signs();
            return signs + ShortText.fitCrop(text, room - SIGN * signs.length() / 2);
        }
        return text.equals(stay.memberName()) ? ShortText.fitName(text, room) : ShortText.fit(text, room, false);
    }
}
