package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.shelf.RackPicture.GroupPicture;
import warmshelf.shelf.RackPicture.OutPicture;
import warmshelf.shelf.RackPicture.PlacePicture;
import warmshelf.shelf.RackPicture.ShelfPicture;
import warmshelf.words.DayWords;

/** Works out where everything of a rack is drawn. */
final class RackDrawing {
    /** Two racks of four places in a row, and a column beside them, fit a laptop. */
    static final int PLACE_WIDTH = 100;

    static final int PLACE_DEPTH = 90;
    /** A rack that would be taller is drawn with up to four places in a row, so that it fits a laptop beside another. */
    private static final int TALLEST = 480;

    private static final int MOST_IN_A_ROW = 4;
    /** The row above places in which their numbers stand. */
    private static final int NUMBER = 13;

    private static final int GAP = 4;
    private static final int UPRIGHT = 10;
    private static final int STRIP = 22;
    private static final int LABEL = 16;
    /** How far a shelf's label reaches; a lamp hangs beside it. */
    private static final int LABEL_WIDTH = 62;

    private static final int LAMP = 6;
    private static final int BOARD = 6;
    private static final int FEET = 12;
    private static final int ROW = NUMBER + PLACE_DEPTH + GAP;

    private final Board board;
    private final LocalDate day;
    /** How many places may stand in a row where a mat or a light has a shelf to itself. */
    private int inARow;

    RackDrawing(Board board, LocalDate day) {
        this.board = board;
        this.day = day;
    }

    RackPicture draw(Rack rack) {
        inARow = 0;
        inARow = widest(rack);
        while (inARow < MOST_IN_A_ROW && height(rack) > TALLEST) {
            inARow++;
        }
        int width = rack.shelves().stream().mapToInt(this::shelfWidth).max().orElse(columnWidth(1)) + 2 * UPRIGHT;
        List<ShelfPicture> shelves = new ArrayList<>();
        int top = 0;
        for (Shelf shelf : rack.shelves()) {
            boolean lowest = shelves.size() == rack.shelves().size() - 1;
            ShelfPicture picture = shelf(shelf, top, width, lowest ? FEET : 0);
            shelves.add(picture);
            top += picture.box().height();
        }
        return new RackPicture(rack.id(), rack.name(), width, Math.max(top, FEET), shelves);
    }

    /** The most places that stand beside each other on a shelf anyway. */
    private int widest(Rack rack) {
        return rack.shelves().stream().mapToInt(this::columns).max().orElse(1);
    }

    private int height(Rack rack) {
        return FEET
                + rack.shelves().stream()
                        .mapToInt(shelf -> LABEL + rows(shelf) * ROW + STRIP + BOARD)
                        .sum();
    }

    private ShelfPicture shelf(Shelf shelf, int top, int width, int feet) {
        int boardY = LABEL + rows(shelf) * ROW + STRIP;
        List<GroupPicture> groups = new ArrayList<>();
        int x = UPRIGHT + GAP;
        for (Mat mat : shelf.mats()) {
            int columns = columns(shelf, mat.places());
            groups.add(mat(mat, x, boardY, columns));
            x += columnWidth(columns);
        }
        Box lamp = null;
        if (shelf.isLit()) {
            int columns = columns(shelf, shelf.litPlaces());
            Box strip = new Box(x, boardY - STRIP, columnWidth(columns) - GAP, STRIP);
            groups.add(new GroupPicture(
                    SAY.underLight(),
                    null,
                    strip,
                    null,
                    null,
                    null,
                    places(shelf.litPlaces(), columns, strip, SAY::litPlace, false)));
            int lampX = Math.max(x, UPRIGHT + LABEL_WIDTH);
            lamp = new Box(lampX, LABEL / 2 - 1, x + strip.width() - lampX, LAMP);
        }
        return new ShelfPicture(
                shelf.id(),
                shelf.fromTop(),
                new Box(0, top, width, boardY + BOARD + feet),
                LABEL - 5,
                boardY,
                lamp,
                groups);
    }

    private GroupPicture mat(Mat mat, int x, int boardY, int columns) {
        Box strip = new Box(x, boardY - STRIP, columnWidth(columns) - GAP, STRIP);
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
                places(mat.places(), columns, strip, place -> SAY.matPlace(mat.name(), place), out != null));
    }

    private static OutPicture out(Mat mat, Outage outage, Box strip) {
        String full = SAY.matIsOut(mat.name(), outage.words());
        String brief = SAY.matOutTo(mat.name(), DayWords.day(outage.lastDay()));
        int room = strip.width() - 12;
        String text = ShortText.fit(full, room, true).equals(full) ? full : ShortText.fit(brief, room, true);
        return new OutPicture(text, "%s: %s".formatted(full, outage.reason()));
    }

    private List<PlacePicture> places(
            List<Place> places, int columns, Box strip, IntFunction<String> words, boolean out) {
        int rows = rows(places.size(), columns);
        List<PlacePicture> pictures = new ArrayList<>();
        for (int index = 0; index < places.size(); index++) {
            int x = strip.x() + index % columns * (PLACE_WIDTH + GAP);
            int y = strip.y() - (rows - index / columns) * ROW + NUMBER;
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
    private static int fewestColumns(int places) {
        if (places <= 2) {
            return places;
        }
        return places <= 4 ? 2 : Math.min(MOST_IN_A_ROW, (places + 1) / 2);
    }

    /** What has its shelf to itself takes the width that the rack has. */
    private int columns(Shelf shelf, List<Place> places) {
        boolean alone = shelf.mats().size() + (shelf.isLit() ? 1 : 0) == 1;
        int fewest = fewestColumns(places.size());
        return alone ? Math.max(fewest, Math.min(places.size(), inARow)) : fewest;
    }

    /** The places beside each other on a shelf. */
    private int columns(Shelf shelf) {
        return groups(shelf).mapToInt(places -> columns(shelf, places)).sum();
    }

    private static Stream<List<Place>> groups(Shelf shelf) {
        return Stream.concat(
                shelf.mats().stream().map(Mat::places), shelf.isLit() ? Stream.of(shelf.litPlaces()) : Stream.empty());
    }

    private static int rows(int places, int columns) {
        return places == 0 ? 0 : (places + columns - 1) / columns;
    }

    private int rows(Shelf shelf) {
        return groups(shelf)
                .mapToInt(places -> rows(places.size(), columns(shelf, places)))
                .max()
                .orElse(0);
    }

    private static int columnWidth(int columns) {
        return columns * (PLACE_WIDTH + GAP) + GAP;
    }

    private int shelfWidth(Shelf shelf) {
        return GAP
                + groups(shelf)
                        .mapToInt(places -> columnWidth(columns(shelf, places)))
                        .sum();
    }
}
