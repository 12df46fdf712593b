package warmshelf.check;

import java.util.List;
import java.util.Map;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** Tells coordinators of every mat that is too hot or too cold, and members of those on which something of theirs lies. */
public final class MatAlarmNews implements Aside {
    private final MatAlarmStore store;

    public MatAlarmNews(MatAlarmStore store) {
        this.store = store;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        List<MatAlarm> told = store.on(visitor.today()).stream()
                .filter(alarm -> visitor.coordinator() || alarm.concerned().contains(visitor.memberId()))
                .toList();
        return Map.of("matAlarms", told);
    }
}
