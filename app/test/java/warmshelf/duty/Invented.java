package warmshelf.duty;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;

/** An invented group with days to give out, of whom some have served already. */
record Invented(List<Turn> turns, Map<Turn, UUID> duties, RotaBook book) {
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    /** At most six turns and four people, so that every way can be tried. */
    static Invented small(Random chance) {
        return of(chance, 1 + chance.nextInt(3), 1 + chance.nextInt(4), 2, chance.nextInt(4));
    }

    /** Four weeks at two sites that are not looked at together, with twelve people. */
    static Invented large(Random chance) {
        return of(chance, 28, 12, 2, 0);
    }

    private static Invented of(Random chance, int days, int people, int sites, int together) {
        List<Turn> turns = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            for (int site = 0; site < sites; site++) {
                turns.add(new Turn(new UUID(7, site), MONDAY.plusDays(day)));
            }
        }
        List<Volunteer> volunteers = new ArrayList<>();
        Map<Turn, UUID> duties = new HashMap<>();
        for (int person = 0; person < people; person++) {
            UUID id = FairRotaTest.id("person " + person);
            Map<UUID, Set<DayOfWeek>> weekdays = new HashMap<>();
            for (int site = 0; site < sites; site++) {
                Set<DayOfWeek> can = new HashSet<>();
                for (DayOfWeek weekday : DayOfWeek.values()) {
                    if (chance.nextInt(5) < 2) {
                        can.add(weekday);
                    }
                }
                weekdays.put(new UUID(7, site), can);
            }
            for (int back = 1; back <= chance.nextInt(4); back++) {
                duties.put(new Turn(new UUID(7, chance.nextInt(sites)), MONDAY.minusDays(1 + chance.nextInt(9))), id);
            }
            volunteers.add(new Volunteer(id, "person " + person, weekdays, List.of()));
        }
        Set<UUID> shared = new HashSet<>();
        for (int site = 0; site < together; site++) {
            shared.add(new UUID(7, site));
        }
        return new Invented(turns, duties, new RotaBook(volunteers, duties, shared));
    }
}
