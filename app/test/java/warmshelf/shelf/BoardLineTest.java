package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import warmshelf.shelf.DayStrip.DayLink;

class BoardLineTest {
    private static final List<PlaceOnSite> SPOTS = PlaceOnSite.walk(DrawnCellar.sites());

    @Test
    void places_are_walked_from_the_top_shelf_down() {
        assertThat(SPOTS)
                .extracting(PlaceOnSite::placeWords)
                .containsExactly(
                        "lit place 1",
                        "lit place 2",
                        "mat M1, place 1",
                        "mat M1, place 2",
                        "mat M1, place 3",
                        "mat M1, place 4",
                        "mat M2, place 1",
                        "mat M2, place 2");
    }

    @Test
    void a_place_is_found_with_everything_around_it() {
        PlaceOnSite spot = PlaceOnSite.find(DrawnCellar.sites(), DrawnCellar.place("M2", 2))
                .orElseThrow();

        assertThat(spot.words()).isEqualTo("Hall cellar, rack A, shelf 2, mat M2, place 2");
    }

    @Test
    void the_list_of_a_day_names_every_place_and_says_which_are_free() {
        Board board = DrawnCellar.board(
                DrawnCellar.stay(1, 1, 1, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(5)),
                DrawnCellar.stay(1, 3, 2, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(5)));

        List<BoardLine> lines = BoardLine.ofDay(SPOTS, board, DrawnCellar.DAY);

        assertThat(lines).hasSize(9);
        assertThat(lines.stream().map(BoardLine::stay).filter(Objects::nonNull))
                .extracting(StayOnBoard::quarterWords)
                .containsExactly("quarter 1", "right half");
        assertThat(lines.get(2).celsius()).isEqualTo(27);
        assertThat(lines.get(0).celsius()).isNull();
    }

    @Test
    void the_list_of_weeks_names_stays_by_place_and_then_by_day() {
        StayOnBoard later = DrawnCellar.stay(1, 1, 4, DrawnCellar.DAY.plusDays(5), DrawnCellar.DAY.plusDays(9));
        StayOnBoard sooner = DrawnCellar.stay(1, 1, 4, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(5));
        StayOnBoard next = DrawnCellar.stay(2, 1, 4, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(5));

        assertThat(BoardLine.ofStays(SPOTS, DrawnCellar.board(next, later, sooner)))
                .extracting(BoardLine::stay)
                .containsExactly(sooner, later, next);
    }

    @Test
    void the_strip_shows_how_full_each_day_is() {
        StayOnBoard half = DrawnCellar.stay(1, 1, 2, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(2));

        DayStrip strip = DayStrip.around(DrawnCellar.DAY, DrawnCellar.DAY.plusDays(1), SPOTS, List.of(half));

        // 2 of 8 places' 32 quarters are 6.25 %
        assertThat(strip.days())
                .filteredOn(link -> link.percent() > 0)
                .containsExactly(
                        new DayLink(DrawnCellar.DAY, 6, true, false),
                        new DayLink(DrawnCellar.DAY.plusDays(1), 6, false, true));
    }

    @Test
    void a_group_without_places_is_not_full() {
        assertThat(DayStrip.around(DrawnCellar.DAY, DrawnCellar.DAY, List.of(), List.of())
                        .days())
                .allSatisfy(link -> assertThat(link.percent()).isZero());
    }
}
