package warmshelf.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import warmshelf.duty.DutyStore;
import warmshelf.duty.Turn;
import warmshelf.shelf.Site;

/** Who looks on which day: turns of three days, everyone in order, another person at each site. */
final class DemoRota {
    private static final int DAYS_BACK = 21;
    private static final int DAYS_AHEAD = 14;
    private static final int DAYS_OF_A_TURN = 3;
    private static final int PEOPLE_BETWEEN_SITES = 6;

    private final List<UUID> members;
    private final LocalDate today;

    DemoRota(List<UUID> members, LocalDate today) {
        this.members = members;
        this.today = today;
    }

    /** Who looks at a site on a day, before the written rota begins too. */
    UUID onDuty(int siteNumber, LocalDate day) {
        long turn = Math.floorDiv(day.toEpochDay() - today.toEpochDay() + DAYS_BACK, DAYS_OF_A_TURN);
        return members.get((int) Math.floorMod(turn + (long) siteNumber * PEOPLE_BETWEEN_SITES, (long) members.size()));
    }

    void write(DemoHouse house, UUID coordinator) {
        List<DutyStore.Change> changes = new ArrayList<>();
        List<Site> sites = house.sites().all();
        for (int site = 0; site < sites.size(); site++) {
            UUID siteId = sites.get(site).id();
            for (int day = -DAYS_BACK; day < DAYS_AHEAD; day++) {
                changes.add(new DutyStore.Change(
                        new Turn(siteId, today.plusDays(day)), null, onDuty(site, today.plusDays(day))));
            }
        }
        house.duties().write(changes, today, coordinator);
    }
}
