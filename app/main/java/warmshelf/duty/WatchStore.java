package warmshelf.duty;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;

/** Reads who looks today and what is asked. It is kept until this process writes something, as Today is read often. */
public final class WatchStore {
    private final Database database;
    private final DutyStore duties;
    private final StandInStore standIns;
    private final SiteRuleStore rules;
    private final SwapReadStore swaps;
    private volatile @Nullable Watch kept;

    WatchStore(Database database, DutyStore duties, StandInStore standIns, SiteRuleStore rules, SwapReadStore swaps) {
        this.database = database;
        this.duties = duties;
        this.standIns = standIns;
        this.rules = rules;
        this.swaps = swaps;
    }

    /**
     * A day's watch.
     *
     * @param writes how much this process had written when it was read
     * @param sites in walking order
     * @param swaps all of days from this one on
     */
    record Watch(long writes, LocalDate day, List<SiteWatch> sites, List<Swap> swaps) {}

    Watch of(LocalDate day) {
        Watch last = kept;
        // other processes that share the database are not counted, so there it is read each time
        if (last != null
                && !database.isShared()
                && last.day().equals(day)
                && last.writes() == database.writesBesideLooks()) {
            return last;
        }
        Watch read = read(day, database.writesBesideLooks());
        kept = read;
        return read;
    }

    private Watch read(LocalDate day, long writes) {
        Map<Turn, DutyStore.Holder> rota = duties.rota(day, day.plusDays(1));
        Map<Turn, Named> standing = standIns.between(day, day.plusDays(1));
        List<SiteWatch> sites = rules.all().stream()
                .map(rule -> {
                    Turn turn = new Turn(rule.site().id(), day);
                    DutyStore.Holder holder = rota.get(turn);
                    Named onDuty = holder == null ? null : new Named(holder.id(), holder.name());
                    return new SiteWatch(rule.site(), rule.doneBy(), onDuty, standing.get(turn));
                })
                .toList();
        return new Watch(writes, day, sites, swaps.since(day));
    }
}
