package warmshelf.duty;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class StandInsTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
    private static final UUID CELLAR = new UUID(0, 1);
    private static final UUID GREENHOUSE = new UUID(0, 2);

    private final Volunteer ada = person("Ada");
    private final Volunteer ben = person("Ben");
    private final Volunteer cid = person("Cid");

    @Test
    void the_next_least_served_who_is_not_on_duty_that_day_stands_in_and_it_goes_round() {
        Map<Turn, UUID> duties = new HashMap<>();
        for (int day = 0; day < 4; day++) {
            duties.put(turn(CELLAR, day), ada.id());
        }

        Map<Turn, UUID> settled = StandIns.settle(List.copyOf(duties.keySet()), Map.of(), book(duties, ada, ben, cid));

        assertThat(settled)
                .containsEntry(turn(CELLAR, 0), ben.id())
                .containsEntry(turn(CELLAR, 1), cid.id())
                .containsEntry(turn(CELLAR, 2), ben.id())
                .containsEntry(turn(CELLAR, 3), cid.id());
    }

    @Test
    void whoever_is_down_stays_although_another_has_served_less() {
        Map<Turn, UUID> duties =
                Map.of(turn(CELLAR, 0), ada.id(), turn(CELLAR, -5), cid.id(), turn(CELLAR, -6), cid.id());

        Map<Turn, UUID> settled = StandIns.settle(
                List.of(turn(CELLAR, 0)), Map.of(turn(CELLAR, 0), cid.id()), book(duties, ada, ben, cid));

        assertThat(settled).containsExactly(Map.entry(turn(CELLAR, 0), cid.id()));
    }

    @Test
    void whoever_has_the_day_by_now_stands_in_no_more() {
        Map<Turn, UUID> duties = Map.of(turn(CELLAR, 0), ben.id());

        Map<Turn, UUID> settled =
                StandIns.settle(List.of(turn(CELLAR, 0)), Map.of(turn(CELLAR, 0), ben.id()), book(duties, ada, ben));

        assertThat(settled).containsExactly(Map.entry(turn(CELLAR, 0), ada.id()));
    }

    @Test
    void nobody_stands_in_at_two_sites_on_a_day_or_beside_a_duty_elsewhere() {
        Map<Turn, UUID> duties = Map.of(turn(CELLAR, 0), ada.id(), turn(GREENHOUSE, 0), ben.id());

        Map<Turn, UUID> settled = StandIns.settle(List.copyOf(duties.keySet()), Map.of(), book(duties, ada, ben, cid));

        assertThat(settled).hasSize(1).containsValue(cid.id());
    }

    private static Volunteer person(String name) {
        Set<DayOfWeek> every = Set.of(DayOfWeek.values());
        return new Volunteer(FairRotaTest.id(name), name, Map.of(CELLAR, every, GREENHOUSE, every), List.of());
    }

    private static RotaBook book(Map<Turn, UUID> duties, Volunteer... people) {
        return new RotaBook(List.of(people), duties, Set.of());
    }

    private static Turn turn(UUID site, int day) {
        return new Turn(site, MONDAY.plusDays(day));
    }
}
