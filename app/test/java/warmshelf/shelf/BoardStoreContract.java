package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.StoreContract;

/** What lies where over a range of days. */
abstract class BoardStoreContract extends StoreContract {
    private static final LocalDate FROM = LocalDate.of(2027, 3, 8);
    private static final LocalDate TO = LocalDate.of(2027, 3, 15);

    private BoardStore board;
    private ShelfCast cast;
    private Mat mat;

    @BeforeEach
    void prepare() {
        board = new BoardStore(database().sql(), cropId -> "the crop " + cropId, (trial, way) -> trial + way);
        cast = new ShelfCast(database(), audit());
        UUID shelf =
                done(new ShelfStore(database().sql(), audit()).add(cast.rack(), new ShelfDraft(1, 0, 0), cast.ilse()));
        new MatStore(database().sql(), audit()).add(shelf, new MatDraft("M1", 1, 2, 18, 32, 107, 25), cast.ilse());
        mat = new ShelvingStore(database().sql())
                .all()
                .get(0)
                .racks()
                .get(0)
                .shelves()
                .get(0)
                .mats()
                .get(0);
    }

    @Test
    void a_stay_comes_with_the_words_that_a_board_shows() {
        UUID sowing = cast.stay(place(0), 3, 2, FROM, 5);

        StayOnBoard stay = onlyStay();

        assertThat(stay.sowingId()).isEqualTo(sowing);
        assertThat(stay.placeId()).isEqualTo(place(0));
        assertThat(stay.firstQuarter()).isEqualTo(3);
        assertThat(stay.quarters()).isEqualTo(2);
        assertThat(stay.from()).isEqualTo(FROM);
        assertThat(stay.to()).isEqualTo(FROM.plusDays(5));
        assertThat(stay.cropName()).isEqualTo("the crop pepper");
        assertThat(stay.memberName()).isEqualTo("Ilse");
        assertThat(stay.stageWord()).isEqualTo("sown");
        assertThat(stay.kind()).isEqualTo("half-tray");
        assertThat(stay.trial()).isNull();
    }

    @Test
    void a_stay_that_reaches_into_the_range_is_there_and_one_that_only_touches_it_is_not() {
        cast.stay(place(0), 1, 4, FROM.minusDays(6), 6);
        cast.stay(place(1), 1, 4, TO, 6);
        UUID in = cast.stay(place(1), 1, 4, FROM.minusDays(6), 7);

        assertThat(onlyStay().sowingId()).isEqualTo(in);
    }

    @Test
    void a_stay_that_ended_on_its_first_day_holds_nothing() {
        cast.stay(place(0), 1, 4, FROM.plusDays(2), 0);

        assertThat(board.read(FROM, TO).stays()).isEmpty();
    }

    @Test
    void set_points_are_read_from_the_first_day_up_to_but_not_on_the_last() {
        cast.setPoint(mat.id(), FROM.minusDays(1), 20);
        cast.setPoint(mat.id(), FROM, 26);
        cast.setPoint(mat.id(), TO, 30);

        SetPoints setPoints = board.read(FROM, TO).setPoints();

        assertThat(setPoints.on(mat.id(), FROM.minusDays(1))).isEmpty();
        assertThat(setPoints.on(mat.id(), FROM)).contains(26.0);
        assertThat(setPoints.on(mat.id(), TO)).isEmpty();
    }

    private UUID place(int index) {
        return mat.places().get(index).id();
    }

    private StayOnBoard onlyStay() {
        List<StayOnBoard> stays = board.read(FROM, TO).stays();
        assertThat(stays).hasSize(1);
        return stays.get(0);
    }
}
