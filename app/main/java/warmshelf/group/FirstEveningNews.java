package warmshelf.group;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import warmshelf.db.Database;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** Tells coordinators what a new group still has to do, until all of it is done. */
public final class FirstEveningNews implements Aside {
    private final FirstEveningStore store;

    public FirstEveningNews(Database database) {
        this.store = new FirstEveningStore(database);
    }

    /** A step, and whether it is taken. */
    public record Line(FirstStep step, boolean done) {}

    @Override
    public Map<String, Object> model(Visitor visitor) {
        Set<FirstStep> taken = visitor.coordinator() ? store.taken() : Set.of();
        boolean open = visitor.coordinator() && taken.size() < FirstStep.values().length;
        List<Line> lines = open
                ? Arrays.stream(FirstStep.values())
                        .map(step -> new Line(step, taken.contains(step)))
                        .toList()
                : List.of();
        return Map.of("firstSteps", lines, "firstStepsDone", taken.size());
    }
}
