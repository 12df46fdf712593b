package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Awaiting;
import warmshelf.web.Visitor;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/** Days of the coming week on which nobody is down to look, at sites where somebody usually is. */
final class EmptyTurnNews implements Awaiting {
    /** So early whoever looks can still be found; days further off are filled by the next proposal. */
    private static final int DAYS_AHEAD = 7;
    /** A site at which nobody was down in that time before has no rota, and none is missed. */
    private static final int DAYS_BEFORE = 14;

    private static final int MOST_NAMED = 3;

    private final DutyStore duties;

    EmptyTurnNews(DutyStore duties) {
        this.duties = duties;
    }

    @Override
    public List<Matter> matters(Visitor coordinator) {
        LocalDate today = coordinator.today();
        Map<Turn, DutyStore.Holder> rota = duties.rota(today.minusDays(DAYS_BEFORE), today.plusDays(DAYS_AHEAD));
        return duties.sitesInUse(today).stream()
                .filter(site -> coordinator.reach().covers(site.id()))
                .flatMap(site -> empty(site, rota, today).stream())
                .toList();
    }

    private static Optional<Matter> empty(Named site, Map<Turn, DutyStore.Holder> rota, LocalDate today) {
        List<LocalDate> empty = today.datesUntil(today.plusDays(DAYS_AHEAD))
                .filter(day -> !isHeld(rota.get(new Turn(site.id(), day))))
                .toList();
        boolean kept = rota.keySet().stream().anyMatch(turn -> turn.site().equals(site.id()));
        return kept && !empty.isEmpty()
                ? Optional.of(
                        new Matter(SAY.nobodyLooks(site.name(), named(empty)), "", "/duty", empty.contains(today)))
                : Optional.empty();
    }

    private static boolean isHeld(DutyStore.@Nullable Holder holder) {
        return holder != null && !holder.left();
    }

    private static String named(List<LocalDate> days) {
        return days.size() <= MOST_NAMED
                ? Counted.all(days.stream().map(DayWords::day).toList())
                : SAY.daysOfWeek(days.size());
    }
}
