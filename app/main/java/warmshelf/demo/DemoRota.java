package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import warmshelf.duty.DutyStore;
import warmshelf.duty.SiteWeekday;
import warmshelf.duty.Turn;
import warmshelf.shelf.Site;

/**
 * Who looks on which day: turns of three days, everyone in order, another person at each site. Behind the days that are
 * written the rota is empty, for a proposal to fill with those who said when they can.
 */
final class DemoRota {
    private static final int DAYS_BACK = 21;
    private static final int DAYS_AHEAD = 14;
    private static final int DAYS_OF_A_TURN = 3;
    private static final int PEOPLE_BETWEEN_SITES = 6;

    /** A day that whoever has it asks everyone to take. */
    private static final int ASKED_DAYS_AHEAD = 4;

    private static final int AWAY_DAYS_AHEAD = 17;
    private static final int DAYS_AWAY = 5;

    private final Map<String, UUID> byName;
    private final List<UUID> members;
    private final LocalDate today;

    DemoRota(Map<String, UUID> byName, LocalDate today) {
        this.byName = byName;
        this.members = List.copyOf(byName.values());
        this.today = today;
    }

    /** Who looks at a site on a day, before the written rota begins too. */
    UUID onDuty(int siteNumber, LocalDate day) {
        long turn = Math.floorDiv(day.toEpochDay() - today.toEpochDay() + DAYS_BACK, DAYS_OF_A_TURN);
        return members.get((int) Math.floorMod(turn + (long) siteNumber * PEOPLE_BETWEEN_SITES, (long) members.size()));
    }

    void write(DemoHouse house, UUID coordinator) {
        List<DutyStore.Change> changes = new ArrayList<>();
        List<Site> sites = house.shelving().all();
        for (int site = 0; site < sites.size(); site++) {
            UUID siteId = sites.get(site).id();
            for (int day = -DAYS_BACK; day < DAYS_AHEAD; day++) {
                changes.add(new DutyStore.Change(
                        new Turn(siteId, today.plusDays(day)), null, onDuty(site, today.plusDays(day))));
            }
        }
        done(house.duties().write(changes, today, coordinator));
        sayWhoCan(house, sites);
    }

    private void sayWhoCan(DemoHouse house, List<Site> sites) {
        Map<String, UUID> siteIds = sites.stream().collect(Collectors.toMap(Site::name, Site::id));
        Map<UUID, Set<SiteWeekday>> can = new LinkedHashMap<>();
        for (CSVRecord row : DemoTable.rows("willing.csv")) {
            UUID site = DemoTable.known(siteIds, row.get("site"));
            Set<SiteWeekday> weekdays =
                    can.computeIfAbsent(DemoTable.known(byName, row.get("name")), member -> new LinkedHashSet<>());
            row.get("weekdays")
                    .chars()
                    .forEach(digit -> weekdays.add(new SiteWeekday(site, DayOfWeek.of(digit - '0'))));
        }
        can.forEach((member, weekdays) -> house.willing().keep(member, weekdays, today, member));
        UUID away = can.keySet().iterator().next();
        LocalDate first = today.plusDays(AWAY_DAYS_AHEAD);
        house.willing().addAway(away, first, first.plusDays(DAYS_AWAY - 1), today, away);
    }

    /** Whoever has a day soon asks everyone to take it. */
    void askForSwap(DemoHouse house) {
        LocalDate day = today.plusDays(ASKED_DAYS_AHEAD);
        Turn turn = new Turn(house.shelving().all().get(0).id(), day);
        done(house.swaps().ask(turn, null, null, today, onDuty(0, day)));
    }
}
