package warmshelf.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Places down, days across, as many as were chosen in the same width. Sizes are CSS pixels; the names stand in a picture of their own, so that they stay in sight
 * while the days are scrolled.
 *
 * @param todayX where today begins; null where today is not shown
 */
public record WeeksPicture(
        LocalDate from,
        int weeks,
        int height,
        @Nullable Integer todayX,
        List<WeekHead> heads,
        List<DayHead> days,
        List<BandPicture> bands) {
    /** Days and names together fill a laptop. */
    static final int WIDTH = 1064;

    static final int NAMES = 150;

    /** {@code words} may be empty where there is no room for them. */
    public record WeekHead(int x, String words) {}

    /** {@code x} is its middle. */
    public record DayHead(int x, LocalDate day) {}

    /**
     * A mat or the lit places of a shelf: rack, shelf and name, how warm it is when, when it cannot be used, and its places.
     *
     * @param matId null on lit places
     * @param y top of the band
     * @param height with its places
     */
    public record BandPicture(
            String name,
            String where,
            UUID siteId,
            @Nullable UUID matId,
            int y,
            int height,
            List<WarmRun> warm,
            List<OutRun> out,
            List<RowPicture> rows) {
        public boolean isMat() {
            return matId != null;
        }
    }

    /**
     * Days in a row on which a mat cannot be used.
     *
     * @param text as long as its days have room for
     * @param words everything in full, for those who hear the page
     */
    public record OutRun(int x, int width, String text, String words) {}

    /** Days in a row at one set-point. */
    public record WarmRun(int x, int width, double celsius, WarmScale warmth) {}

    /** A place and the stays on it; {@code lanes} is 1, 2 or 4, as finely as its stays need. */
    public record RowPicture(UUID placeId, int number, int y, int height, int lanes, List<Bar> bars) {}

    /**
     * A stay.
     *
     * @param over whether it has ended, so that it stays as it was
     * @param movableFrom the first day, where it can be another one; null: something lies there already
     * @param begun it began before the first day shown
     * @param words everything in full, for those who hear the page
     */
    public record Bar(
            UUID stayId,
            Quarters quarters,
            boolean over,
            @Nullable LocalDate movableFrom,
            Box box,
            String kind,
            boolean begun,
            String text,
            String words) {}

    public int width() {
        return WIDTH;
    }

    public int names() {
        return NAMES;
    }

    /** How wide a day is, for a script. */
    public double dayWidth() {
        return WIDTH / (weeks * 7.0);
    }

    /** The day after the last one shown. */
    public LocalDate to() {
        return from.plusWeeks(weeks);
    }

    /** The places of the sites given, over {@code weeks} weeks from {@code from}. */
    public static WeeksPicture of(List<Site> sites, Board board, LocalDate from, int weeks, LocalDate today) {
        return new WeeksDrawing(board, from, weeks, today).draw(sites);
    }
}
