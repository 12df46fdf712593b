package warmshelf.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One rack on one day, as one sees it standing there. Everything on a shelf is measured from that shelf's top. Sizes are CSS pixels: text is drawn at its reading size, and a rack
 * too wide for a screen is scrolled, not shrunk.
 */
public record RackPicture(UUID id, String name, int width, int height, List<ShelfPicture> shelves) {

    /**
     * A level between the uprights.
     *
     * @param level counted from the top
     * @param box the part of the rack that it takes
     * @param boardY top edge of the board that everything stands on
     * @param lamp the light above the lit places; null without
     */
    public record ShelfPicture(
            UUID id,
            int level,
            Box box,
            int labelY,
            int boardY,
            @Nullable Box lamp,
            List<GroupPicture> groups) {}

    /**
     * A mat, or the lit places of a shelf.
     *
     * @param matId null on lit places
     * @param strip the mat itself, seen from the front
     * @param celsius its set-point of the day; null where it is not heated, and on lit places
     * @param out why it cannot be used on the day; null where it can
     */
    public record GroupPicture(
            String name,
            @Nullable UUID matId,
            Box strip,
            @Nullable Double celsius,
            @Nullable WarmScale warmth,
            @Nullable OutPicture out,
            List<PlacePicture> places) {
        private static final int ROOMY = 180;

        public boolean isMat() {
            return matId != null;
        }

        /** Whether its strip has room for its warmth as a word and a figure; its title says the word anyway. */
        public boolean isRoomy() {
            return strip.width() >= ROOMY;
        }
    }

    /**
     * A mat out of service; its places are hatched.
     *
     * @param text as long as its strip has room for
     * @param words everything in full, for those who hear the page
     */
    public record OutPicture(String text, String words) {}

    /** A place with what lies on it and what is free. */
    public record PlacePicture(UUID id, int number, Box box, List<TrayPicture> trays, List<Box> free) {}

    public static RackPicture of(Rack rack, Board board, LocalDate day) {
        return new RackDrawing(board, day).draw(rack);
    }
}
