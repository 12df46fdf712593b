package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.util.List;
import java.util.Map;
import warmshelf.web.Aside;
import warmshelf.web.Awaiting;
import warmshelf.web.Visitor;
import warmshelf.words.Units;

/** Tells coordinators of every mat of theirs that is too hot or too cold, and members of those on which something of theirs lies. */
public final class MatAlarmNews implements Aside, Awaiting {
    private final MatAlarmStore store;

    public MatAlarmNews(MatAlarmStore store) {
        this.store = store;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        List<MatAlarm> told = store.on(visitor.today()).stream()
                .filter(alarm -> visitor.reach().covers(alarm.site())
                        || alarm.concerned().contains(visitor.memberId()))
                .toList();
        return Map.of("matAlarms", told);
    }

    @Override
    public List<Matter> matters(Visitor coordinator) {
        return store.on(coordinator.today()).stream()
                .filter(alarm -> coordinator.reach().covers(alarm.site()))
                .map(alarm -> matter(alarm, coordinator.units()))
                .toList();
    }

    private static Matter matter(MatAlarm alarm, Units units) {
        String read = units.temperature(alarm.readC());
        String set = units.temperature(alarm.setPointC());
        String what = alarm.isHot() ? SAY.matTooHot(alarm.name(), read, set) : SAY.matTooCold(alarm.name(), read, set);
        return new Matter(what, alarm.where(), "/mats/" + alarm.mat(), true);
    }
}
