package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class WeekAheadTest {
    private static final LocalDate DAY = DrawnCellar.DAY;

    @Test
    void what_leaves_within_seven_days_stands_under_its_day() {
        WeekAhead week = week(
                List.of(),
                DrawnCellar.stay(1, 1, 4, DAY.minusDays(5), DAY.plusDays(7)),
                DrawnCellar.stay(2, 1, 4, DAY.minusDays(5), DAY.plusDays(8)),
                DrawnCellar.stay(3, 1, 4, DAY.minusDays(5), DAY));

        assertThat(week.leaves()).extracting(WeekAhead.Day::day).containsExactly(DAY.plusDays(7));
        assertThat(week.arrives()).isEmpty();
    }

    @Test
    void what_comes_from_another_place_is_told_where_it_leaves_and_does_not_arrive() {
        StayOnBoard first = DrawnCellar.stay(1, 1, 4, DAY.minusDays(5), DAY.plusDays(3));
        StayOnBoard next = after(first, DrawnCellar.place("lit", 2), DAY.plusDays(9));

        WeekAhead week = week(List.of(), first, next);

        assertThat(week.arrives()).isEmpty();
        assertThat(week.leaves()).hasSize(1);
        PlaceOnSite to =
                Objects.requireNonNull(week.leaves().get(0).lines().get(0).next());
        assertThat(to.placeWords()).isEqualTo("lit place 2");
    }

    @Test
    void what_is_laid_down_for_the_first_time_arrives() {
        WeekAhead week = week(List.of(), DrawnCellar.stay(1, 1, 4, DAY.plusDays(2), DAY.plusDays(20)));

        assertThat(week.leaves()).isEmpty();
        assertThat(week.arrives()).extracting(WeekAhead.Day::day).containsExactly(DAY.plusDays(2));
    }

    @Test
    void what_lies_on_a_mat_out_of_service_needs_another_place_while_it_is_out() {
        Outage outage = new Outage(new UUID(5, 5), DrawnCellar.M1, DAY, DAY.plusDays(3), "broken plug");
        StayOnBoard lying = DrawnCellar.stay(1, 1, 4, DAY.minusDays(5), DAY.plusDays(20));
        StayOnBoard later = DrawnCellar.stay(2, 1, 4, DAY.plusDays(1), DAY.plusDays(20));

        assertThat(week(List.of(outage), lying, later).homeless())
                .extracting(line -> line.stay().stayId())
                .containsExactly(lying.stayId());
        assertThat(week(List.of(), lying).homeless()).isEmpty();
    }

    private static StayOnBoard after(StayOnBoard first, UUID place, LocalDate to) {
        return new StayOnBoard(
                UUID.randomUUID(),
                first.sowingId(),
                place,
                1,
                4,
                first.to(),
                to,
                first.cropName(),
                first.memberName(),
                first.stageWord(),
                first.kind(),
                null);
    }

    private static WeekAhead week(List<Outage> outages, StayOnBoard... stays) {
        Board board = new Board(List.of(stays), new SetPoints(Map.of()), outages);
        return WeekAhead.of(PlaceOnSite.walk(DrawnCellar.sites()), board, DAY);
    }
}
