package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.shelf.RackPicture.GroupPicture;
import warmshelf.shelf.RackPicture.OutPicture;
import warmshelf.shelf.RackPicture.PlacePicture;
import warmshelf.shelf.RackPicture.ShelfPicture;
import warmshelf.words.DayWords;

/** Works out where everything of a rack is drawn. */
final class RackDrawing {
    static final int PLACE_WIDTH = 190;
    static final int PLACE_DEPTH = 95;
    private static final int NUMBER = 14;
    private static final int GAP = 4;
    private static final int UPRIGHT = 10;
    private static final int STRIP = 22;
    private static final int LABEL = 24;
    private static final int LAMP = 12;
    private static final int BOARD = 6;
    private static final int FEET = 12;

    private final Board board;
    private final LocalDate day;

    RackDrawing(Board board, LocalDate day) {
        this.board = board;
        this.day = day;
    }

    RackPicture draw(Rack rack) {
        int width =
                rack.shelves().stream().mapToInt(RackDrawing::shelfWidth).max().orElse(columnWidth(1));
        List<ShelfPicture> shelves = new ArrayList<>();
        int top = 0;
        for (Shelf shelf : rack.shelves()) {
            ShelfPicture picture = shelf(shelf, top);
            shelves.add(picture);
            top = picture.boardY() + BOARD;
        }
        return new RackPicture(rack.id(), rack.name(), width + 2 * UPRIGHT, top + FEET, shelves);
    }

    private ShelfPicture shelf(Shelf shelf, int top) {
        int lampTop = top + LABEL;
        int placesTop = lampTop + (shelf.isLit() ? LAMP : 0);
        int boardY = placesTop + rows(shelf) * (PLACE_DEPTH + GAP) + STRIP;
        List<GroupPicture> groups = new ArrayList<>();
        int x = UPRIGHT + GAP;
        for (Mat mat : shelf.mats()) {
            groups.add(mat(mat, x, boardY));
            x += columnWidth(columns(mat.places().size()));
        }
        Box lamp = null;
        if (shelf.isLit()) {
            int width = columnWidth(columns(shelf.litPlaces().size())) - GAP;
            Box strip = new Box(x, boardY - STRIP, width, STRIP);
            groups.add(new GroupPicture(
                    SAY.underLight(),
                    null,
                    strip,
                    null,
                    null,
                    null,
                    places(shelf.litPlaces(), strip, SAY::litPlace, false)));
            lamp = new Box(x, lampTop, width, LAMP / 2);
        }
        return new ShelfPicture(shelf.fromTop(), top + LABEL - 8, boardY, lamp, groups);
    }

    private GroupPicture mat(Mat mat, int x, int boardY) {
        Box strip = new Box(x, boardY - STRIP, columnWidth(columns(mat.places().size())) - GAP, STRIP);
        OutPicture out = board.outage(mat.id(), day)
                .map(outage -> out(mat, outage, strip))
                .orElse(null);
        @Nullable
        Double celsius =
                out != null ? null : board.setPoints().on(mat.id(), day).orElse(null);
        return new GroupPicture(
                mat.name(),
                mat.id(),
                strip,
                celsius,
                celsius == null ? null : WarmScale.of(celsius),
                out,
                places(mat.places(), strip, place -> SAY.matPlace(mat.name(), place), out != null));
    }

    private static OutPicture out(Mat mat, Outage outage, Box strip) {
        String full = SAY.matIsOut(mat.name(), outage.words());
        String brief = SAY.matOutTo(mat.name(), DayWords.day(outage.lastDay()));
        boolean roomy = ShortText.fit(full, strip.width() - 12, true).equals(full);
        return new OutPicture(roomy ? full : brief, "%s: %s".formatted(full, outage.reason()));
    }

    private List<PlacePicture> places(List<Place> places, Box strip, IntFunction<String> words, boolean out) {
        int columns = columns(places.size());
        int rows = rows(places.size());
        List<PlacePicture> pictures = new ArrayList<>();
        for (int index = 0; index < places.size(); index++) {
            int x = strip.x() + NUMBER + index % columns * (PLACE_WIDTH + NUMBER + GAP);
            int y = strip.y() - (rows - index / columns) * (PLACE_DEPTH + GAP);
            Place place = places.get(index);
            pictures.add(place(place, new Box(x, y, PLACE_WIDTH, PLACE_DEPTH), words.apply(place.number()), out));
        }
        return pictures;
    }

    private PlacePicture place(Place place, Box box, String words, boolean out) {
        List<StayOnBoard> stays = lying(place.id());
        List<Quarters> taken = stays.stream()
                .map(stay -> new Quarters(stay.firstQuarter(), stay.quarters()))
                .toList();
        return new PlacePicture(
                place.id(),
                place.number(),
                box,
                stays.stream().map(stay -> TrayPicture.of(stay, box, words)).toList(),
                out
                        ? List.of()
                        : Quarters.free(taken).stream()
                                .map(quarters -> quarters.within(box).inset(2))
                                .toList());
    }

    private List<StayOnBoard> lying(UUID placeId) {
        return board.lying(placeId, day);
    }

    /** Up to two places stand in one row; more stand in rows behind each other, as on a mat seen from a little above. */
    private static int columns(int places) {
        if (places <= 2) {
            return places;
        }
        return places <= 4 ? 2 : Math.min(4, (places + 1) / 2);
    }

    private static int rows(int places) {
        return places == 0 ? 0 : (places + columns(places) - 1) / columns(places);
    }

    private static int rows(Shelf shelf) {
        int most = rows(shelf.litPlaces().size());
        for (Mat mat : shelf.mats()) {
            most = Math.max(most, rows(mat.places().size()));
        }
        return most;
    }

    private static int columnWidth(int columns) {
        return columns * (NUMBER + PLACE_WIDTH + GAP) + GAP;
    }

    private static int shelfWidth(Shelf shelf) {
        int width = GAP;
        for (Mat mat : shelf.mats()) {
            width += columnWidth(columns(mat.places().size()));
        }
        return shelf.isLit() ? width + columnWidth(columns(shelf.litPlaces().size())) : width;
    }
}
