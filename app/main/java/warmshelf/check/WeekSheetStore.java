package warmshelf.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.sowing.Entry;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.Progress;

/** Reads the round of a week. */
final class WeekSheetStore {
    private final HistoryStore histories;
    private final TodayStore today;
    private final WalkStore walk;
    private final RoundReader reader;

    WeekSheetStore(HistoryStore histories, TodayStore today, WalkStore walk, RoundReader reader) {
        this.histories = histories;
        this.today = today;
        this.walk = walk;
        this.reader = reader;
    }

    /** A site at which there are places. */
    public record SheetSite(UUID id, String name) {}

    /** The sites with places, in walking order. */
    List<SheetSite> sites() {
        return walk.addresses().values().stream()
                .map(place -> new SheetSite(place.siteId(), place.site()))
                .distinct()
                .toList();
    }

    /** The sheet of the week in which a day lies. */
    WeekSheet of(UUID site, LocalDate day, LocalDate now) {
        List<LocalDate> days = WeekSheet.week(day);
        Map<UUID, PlaceAddress> places = new LinkedHashMap<>();
        walk.addresses().values().stream()
                .filter(place -> place.siteId().equals(site))
                .forEach(place -> places.put(place.placeId(), place));
        List<History> underWay = histories.underWaySince(days.get(0));
        List<WeekLine> lines = underWay.stream()
                .filter(history -> history.stays().stream().anyMatch(stay -> places.containsKey(stay.placeId())))
                .flatMap(history -> line(history, days, now, places).stream())
                .toList();
        Map<LocalDate, Map<UUID, TodayStore.MatToRead>> mats = new HashMap<>();
        days.forEach(each -> mats.put(each, today.mats(each)));
        return WeekSheet.of(site, days, lines, places, mats, atHomes(underWay, days, now));
    }

    /** How many lie at no place of the group's that week, and are due to be looked at. */
    private int atHomes(List<History> underWay, List<LocalDate> days, LocalDate now) {
        return (int) underWay.stream()
                .filter(history -> days.stream().anyMatch(day -> isDueAtHome(history, day, now)))
                .filter(history -> days.stream()
                        .noneMatch(day -> reader.subject(history, day).stay() != null))
                .count();
    }

    private boolean isDueAtHome(History history, LocalDate day, LocalDate now) {
        History known = day.isAfter(now) ? history : history.before(day);
        Subject subject = reader.subject(known, day);
        return subject.progress().isSown()
                && subject.stay() == null
                && !ChecksDue.on(day, subject).isEmpty();
    }

    /** Who looks at a site on each of some days; left out where nobody is down. */
    Map<LocalDate, TodayStore.OnDuty> onDuty(UUID site, List<LocalDate> days) {
        Map<LocalDate, TodayStore.OnDuty> onDuty = new HashMap<>();
        days.forEach(day -> today.onDuty(day).stream()
                .filter(duty -> duty.siteId().equals(site))
                .findFirst()
                .ifPresent(duty -> onDuty.put(day, duty)));
        return onDuty;
    }

    private Optional<WeekLine> line(
            History history, List<LocalDate> days, LocalDate now, Map<UUID, PlaceAddress> places) {
        List<WeekLine.Box> boxes = new ArrayList<>();
        List<PlaceAddress> at = new ArrayList<>();
        String where = "";
        for (LocalDate day : days) {
            History known = day.isAfter(now) ? history : history.before(day);
            Subject subject = reader.subject(known, day).among(places);
            boxes.add(new WeekLine.Box(
                    day,
                    ChecksDue.on(day, subject),
                    TickRules.soFar(history.sowing(), subject.progress()),
                    entered(history, day)));
            PlaceAddress place = place(subject.stay(), day, places);
            if (place != null && !at.contains(place)) {
                where = at.isEmpty() ? words(subject.stay()) : where;
                at.add(place);
            }
        }
        boolean shows =
                boxes.stream().anyMatch(box -> box.isDue() || !box.entered().isEmpty());
        if (at.isEmpty() || !shows) {
            return Optional.empty();
        }
        Progress progress = history.progress();
        return Optional.of(new WeekLine(
                history,
                at.get(0),
                at.size() > 1 ? at.get(1) : null,
                where,
                TickRules.soFar(history.sowing(), progress),
                progress.lastLookOn(),
                boxes));
    }

    private static String words(@Nullable Stay stay) {
        return stay == null ? "" : stay.slot().words();
    }

    /** As on the round of the day: what comes tomorrow stands at its place already. */
    private static @Nullable PlaceAddress place(@Nullable Stay stay, LocalDate day, Map<UUID, PlaceAddress> places) {
        return stay == null || (!stay.covers(day) && stay.from().isAfter(day.plusDays(1)))
                ? null
                : places.get(stay.placeId());
    }

    private static List<Entry> entered(History history, LocalDate day) {
        return Entry.standing(history.entries()).stream()
                .filter(entry -> entry.seenOn().equals(day))
                .toList();
    }
}
