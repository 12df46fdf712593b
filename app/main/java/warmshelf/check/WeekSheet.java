package warmshelf.check;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The round of a week at one site, as it is printed for the door and typed in again. What was due on a past day is judged by what
 * was known that morning, and each line stands where its sowing lay first that week: so the page for typing keeps the order of
 * the paper, whatever was entered from phones meanwhile.
 *
 * @param days seven, from Monday
 * <p>What lies at members' homes is looked at by whoever has it there: it stands on the season sheet of each, not here.
 *
 * @param racks in walking order
 * @param atHomes how many sowings are looked at in members' homes that week
 */
record WeekSheet(UUID siteId, String site, List<LocalDate> days, List<RackPart> racks, int atHomes) {

    /** One rack, on a page of its own. */
    public record RackPart(String rack, List<SheetStop> stops) {}

    /**
     * One mat, or one shelf's light.
     *
     * @param mat its thermometer; null: none is to be read that week
     */
    public record SheetStop(
            int shelf, String surface, @Nullable MatLine mat, List<WeekLine> lines) {}

    /**
     * A thermometer.
     *
     * @param setPointC on the first day of the week on which it is warm
     */
    public record MatLine(UUID matId, String name, double setPointC, List<MatBox> boxes) {}

    /**
     * A thermometer on a day.
     *
     * @param due whether something lies on the warm mat that day
     * @param readC what was read last; null: nothing was
     */
    public record MatBox(
            LocalDate day, boolean due, @Nullable Double readC, String readBy) {
        static MatBox of(LocalDate day, TodayStore.@Nullable MatToRead mat) {
            return mat == null
                    ? new MatBox(day, false, null, "")
                    : new MatBox(day, true, mat.readC().isNaN() ? null : mat.readC(), mat.readBy());
        }
    }

    /** The days of the week in which a day lies, from Monday. */
    static List<LocalDate> week(LocalDate day) {
        LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return IntStream.range(0, 7).mapToObj(monday::plusDays).toList();
    }

    /**
     * Puts lines in walking order.
     *
     * @param addresses every place of the site in walking order
     * @param mats those that are warm, by day
     */
    static WeekSheet of(
            UUID siteId,
            List<LocalDate> days,
            List<WeekLine> lines,
            Map<UUID, PlaceAddress> addresses,
            Map<LocalDate, Map<UUID, TodayStore.MatToRead>> mats,
            int atHomes) {
        Map<String, Map<String, SheetStop>> racks = new LinkedHashMap<>();
        Map<String, List<WeekLine>> at = lines.stream()
                .sorted(Comparator.comparing((WeekLine line) -> line.address().walkOrder())
                        .thenComparing(line -> line.sowing().title())
                        .thenComparing(line -> line.sowing().id()))
                .collect(Collectors.groupingBy(line -> surface(line.address())));
        for (PlaceAddress place : addresses.values()) {
            Map<String, SheetStop> stops = racks.computeIfAbsent(place.rack(), rack -> new LinkedHashMap<>());
            stops.computeIfAbsent(
                    surface(place),
                    key -> new SheetStop(
                            place.shelf(),
                            place.surface(),
                            matLine(place.matId(), days, mats),
                            at.getOrDefault(key, List.of())));
        }
        List<RackPart> parts = new ArrayList<>();
        racks.forEach((rack, stops) -> {
            List<SheetStop> used = stops.values().stream()
                    .filter(stop -> stop.mat() != null || !stop.lines().isEmpty())
                    .toList();
            if (!used.isEmpty()) {
                parts.add(new RackPart(rack, used));
            }
        });
        String site =
                addresses.values().stream().findFirst().map(PlaceAddress::site).orElse("");
        return new WeekSheet(siteId, site, days, parts, atHomes);
    }

    private static String surface(PlaceAddress place) {
        return "%s/%d/%s".formatted(place.rack(), place.shelf(), place.surface());
    }

    private static @Nullable MatLine matLine(
            @Nullable UUID mat, List<LocalDate> days, Map<LocalDate, Map<UUID, TodayStore.MatToRead>> mats) {
        if (mat == null) {
            return null;
        }
        Optional<TodayStore.MatToRead> first = days.stream()
                .flatMap(day ->
                        Stream.ofNullable(mats.getOrDefault(day, Map.of()).get(mat)))
                .findFirst();
        return first.map(warm -> new MatLine(
                        warm.matId(),
                        warm.name(),
                        warm.setPointC(),
                        days.stream()
                                .map(day -> MatBox.of(
                                        day, mats.getOrDefault(day, Map.of()).get(mat)))
                                .toList()))
                .orElse(null);
    }

    public LocalDate monday() {
        return days.get(0);
    }

    public LocalDate sunday() {
        return days.get(6);
    }

    /** Everything that lies here, in walking order. */
    List<WeekLine> lines() {
        return racks.stream()
                .flatMap(rack -> rack.stops().stream())
                .flatMap(stop -> stop.lines().stream())
                .toList();
    }

    /** Every thermometer to be read, in walking order. */
    List<MatLine> mats() {
        return racks.stream()
                .flatMap(rack -> rack.stops().stream())
                .flatMap(stop -> Stream.ofNullable(stop.mat()))
                .toList();
    }

    /** What all the looks of the week look for, each once, in the order in which one comes to them. */
    List<CheckKind> kinds() {
        return lines().stream()
                .flatMap(line -> line.todos().stream())
                .map(WeekLine.Todo::kind)
                .distinct()
                .toList();
    }
}
