package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.shelf.WeeksPicture.BandPicture;
import warmshelf.shelf.WeeksPicture.Bar;
import warmshelf.shelf.WeeksPicture.DayHead;
import warmshelf.shelf.WeeksPicture.OutRun;
import warmshelf.shelf.WeeksPicture.RowPicture;
import warmshelf.shelf.WeeksPicture.WarmRun;
import warmshelf.shelf.WeeksPicture.WeekHead;
import warmshelf.words.DayWords;

/** Works out where everything of the weeks is drawn. */
final class WeeksDrawing {
    private static final int LANE = 20;
    private static final int TITLE = 22;
    private static final int GAP = 10;
    /** Narrower days have no number, and narrower weeks no name of the day, or only every second week a date. */
    private static final int NUMBERED_DAY = 16;

    private static final int NAMED_WEEK = 80;
    private static final int DATED_WEEK = 50;

    private final Board board;
    private final LocalDate from;
    private final int days;
    private final LocalDate today;

    WeeksDrawing(Board board, LocalDate from, int weeks, LocalDate today) {
        this.today = today;
        this.board = board;
        this.from = from;
        this.days = weeks * 7;
    }

    WeeksPicture draw(List<Site> sites) {
        List<BandPicture> bands = new ArrayList<>();
        int y = 0;
        for (Site site : sites) {
            for (Rack rack : site.racks()) {
                for (Shelf shelf : rack.shelves()) {
                    String where = SAY.shelfOf(site.name(), rack.name(), shelf.fromTop());
                    for (Mat mat : shelf.mats()) {
                        y = add(bands, band(heading(rack, shelf, mat.name()), where, site.id(), mat, mat.places(), y));
                    }
                    if (shelf.isLit()) {
                        y = add(
                                bands,
                                band(
                                        heading(rack, shelf, SAY.lightInShort()),
                                        where,
                                        site.id(),
                                        null,
                                        shelf.litPlaces(),
                                        y));
                    }
                }
            }
        }
        int todayIndex = index(today);
        Integer todayX = todayIndex >= 0 && todayIndex < days ? Integer.valueOf(x(todayIndex)) : null;
        return new WeeksPicture(from, days / 7, y, todayX, heads(), dayHeads(), bands);
    }

    /** For example 'North · 2 · M1', cut where a rack has a long name. */
    private static String heading(Rack rack, Shelf shelf, String what) {
        String rest = " · %d · %s".formatted(shelf.fromTop(), what);
        int room = WeeksPicture.NAMES - 12;
        String whole = rack.name() + rest;
        return ShortText.fit(whole, room, true).equals(whole)
                ? whole
                : ShortText.fit(rack.name(), Math.max(30, room - 8 * rest.length()), true) + rest;
    }

    /** Where a day begins; all days together fill the width, however many they are. */
    private int x(int index) {
        return index * WeeksPicture.WIDTH / days;
    }

    private static int add(List<BandPicture> bands, BandPicture band) {
        bands.add(band);
        return band.y() + band.height() + GAP;
    }

    private BandPicture band(String name, String where, UUID site, @Nullable Mat mat, List<Place> places, int top) {
        List<RowPicture> rows = new ArrayList<>();
        int y = top + TITLE;
        for (Place place : places) {
            String words = mat == null
                    ? SAY.litPlaceAt(where, place.number())
                    : SAY.matPlaceAt(where, mat.name(), place.number());
            RowPicture row = row(place, y, words);
            rows.add(row);
            y += row.height();
        }
        return new BandPicture(
                name,
                where,
                site,
                mat == null ? null : mat.id(),
                top,
                y - top,
                mat == null ? List.of() : runs(mat),
                mat == null ? List.of() : outages(mat),
                rows);
    }

    private List<OutRun> outages(Mat mat) {
        return board.outages(mat.id()).stream()
                .filter(outage -> outage.touches(from, from.plusDays(days)))
                .map(outage -> out(mat, outage))
                .toList();
    }

    private OutRun out(Mat mat, Outage outage) {
        int first = Math.max(0, index(outage.from()));
        int width = x(Math.min(days, index(outage.to()))) - x(first);
        return new OutRun(
                x(first),
                width,
                outText(outage, width - 8),
                outage.isForGood()
                        ? SAY.matRetired(mat.name(), DayWords.day(outage.from()))
                        : SAY.matOut(
                                mat.name(),
                                DayWords.day(outage.from()),
                                DayWords.day(outage.lastDay()),
                                outage.reason()));
    }

    private static String outText(Outage outage, int width) {
        return (outage.isForGood()
                        ? Stream.of(outage.words())
                        : Stream.of(outage.words(), SAY.outTo(DayWords.date(outage.lastDay())), SAY.out()))
                .filter(text -> ShortText.fit(text, width, true).equals(text))
                .findFirst()
                .orElse("");
    }

    private RowPicture row(Place place, int y, String words) {
        List<StayOnBoard> stays = board.at(place.id()).stream()
                .filter(stay -> shownDays(stay) > 0)
                .toList();
        int finest = stays.stream().mapToInt(StayOnBoard::quarters).min().orElse(Place.QUARTERS);
        int lanes = Place.QUARTERS / finest;
        List<Bar> bars = stays.stream().map(stay -> bar(stay, y, lanes, words)).toList();
        return new RowPicture(place.id(), place.number(), y, lanes * LANE, lanes, bars);
    }

    private Bar bar(StayOnBoard stay, int rowY, int lanes, String placeWords) {
        int start = Math.max(0, index(stay.from()));
        int laneQuarters = Place.QUARTERS / lanes;
        Box box = new Box(
                x(start),
                rowY + (stay.firstQuarter() - 1) / laneQuarters * LANE + 1,
                x(start + shownDays(stay)) - x(start),
                stay.quarters() / laneQuarters * LANE - 2);
        boolean begun = index(stay.from()) < 0;
        String names = (begun ? "… " : "") + stay.mark().signs() + ShortText.head(stay.cropName())
                + (stay.trial() == null ? "" : " · " + stay.trial().brief()) + " · " + stay.memberName();
        String words = String.join(
                ", ",
                stay.what(),
                stay.kindWords(),
                stay.memberName(),
                placeWords,
                stay.quarterWords(),
                DayWords.span(stay.from(), stay.to()) + stay.mark().words());
        return new Bar(
                stay.stayId(),
                new Quarters(stay.firstQuarter(), stay.quarters()),
                !stay.to().isAfter(today),
                stay.isFixedOn(today) ? null : stay.from(),
                box,
                stay.kind(),
                begun,
                ShortText.fit(names, box.width() - 10, false),
                words);
    }

    private int shownDays(StayOnBoard stay) {
        return Math.min(days, index(stay.to())) - Math.max(0, index(stay.from()));
    }

    private List<WarmRun> runs(Mat mat) {
        List<WarmRun> runs = new ArrayList<>();
        int start = 0;
        for (int day = 1; day <= days; day++) {
            Double celsius = setPoint(mat, start);
            if (day < days && Objects.equals(celsius, setPoint(mat, day))) {
                continue;
            }
            if (celsius != null) {
                runs.add(new WarmRun(x(start), x(day) - x(start), celsius, WarmScale.of(celsius)));
            }
            start = day;
        }
        return runs;
    }

    private @Nullable Double setPoint(Mat mat, int day) {
        LocalDate on = from.plusDays(day);
        // A mat that cannot be used is not warm, whatever it was set to.
        return board.outage(mat.id(), on).isPresent()
                ? null
                : board.setPoints().on(mat.id(), on).orElse(null);
    }

    private List<WeekHead> heads() {
        int width = x(7);
        return IntStream.range(0, days / 7)
                .mapToObj(week -> {
                    LocalDate monday = from.plusWeeks(week);
                    boolean dated = width >= DATED_WEEK || week % 2 == 0;
                    String words = width >= NAMED_WEEK ? DayWords.day(monday) : dated ? DayWords.date(monday) : "";
                    return new WeekHead(x(week * 7), words);
                })
                .toList();
    }

    private List<DayHead> dayHeads() {
        int width = x(1);
        return IntStream.range(0, width < NUMBERED_DAY ? 0 : days)
                .mapToObj(day -> new DayHead(x(day) + width / 2, from.plusDays(day)))
                .toList();
    }

    private int index(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(from, day);
    }
}
