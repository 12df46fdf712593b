package warmshelf.harvest;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** Asks on Today how it was, once plants have had time to bear and before it is forgotten. */
public final class HarvestNews implements Aside {
    // Most kinds that are raised indoors have borne by then, and it is autumn; later nobody remembers.
    private static final int ASKED_AFTER_DAYS = 120;
    private static final int ASKED_UNTIL_DAYS = 300;

    private final HarvestStore harvests;

    public HarvestNews(HarvestStore harvests) {
        this.harvests = harvests;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        List<UUID> due = harvests.plantedOut(visitor.memberId(), visitor.season()).stream()
                .filter(each -> isAsked(each.plantedOutOn(), visitor.today()))
                .map(HarvestStore.PlantedOut::sowingId)
                .toList();
        int open = due.isEmpty()
                ? 0
                : due.size() - harvests.notes(visitor.memberId(), due).size();
        return Map.of("harvestsAsked", open);
    }

    private static boolean isAsked(LocalDate plantedOut, LocalDate today) {
        return !today.isBefore(plantedOut.plusDays(ASKED_AFTER_DAYS))
                && !today.isAfter(plantedOut.plusDays(ASKED_UNTIL_DAYS));
    }
}
