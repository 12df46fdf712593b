package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.MatDayStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.StayStore;
import warmshelf.allocation.WarmDays;
import warmshelf.crop.CropCatalogue;
import warmshelf.shelf.BoardStore;
import warmshelf.shelf.MatDraft;
import warmshelf.shelf.MatStore;
import warmshelf.shelf.ShelvingStore;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

/** Every whole degree that can be typed, of either unit, is read again as the same wherever a set-point is kept. */
abstract class WholeDegreeContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;
    private static final Band ALL = new Band(10, 40);

    private GrowRoom room;
    private StayStore stays;
    private MatStore mats;

    @BeforeEach
    void widen_the_thermostat() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        mats = new MatStore(database().sql(), audit());
        change(1, 10, 40, 26);
    }

    @ParameterizedTest
    @CsvSource({"F, 50, 104", "C, 10, 40"})
    void a_mat_that_is_turned_stands_at_the_degree_that_was_typed(String unit, int least, int most) {
        Units units = Units.of(unit, "cm");
        SetPointStore setPoints =
                new SetPointStore(database(), new MatDayStore(audit(), new ClashStore(CropCatalogue.bundled())));
        for (int degree = least; degree <= most; degree++) {
            LocalDate day = TODAY.plusDays(degree);
            done(setPoints.set(room.m1(), day, day, units.celsiusOf(degree), room.priya()));
        }

        var board = new BoardStore(database().sql(), cropId -> cropId, (trial, way) -> way)
                .read(TODAY, TODAY.plusDays(most + 1));
        for (int degree = least; degree <= most; degree++) {
            LocalDate day = TODAY.plusDays(degree);
            String typed = degree + " °" + unit;
            assertThat(setPoints.spans(room.m1(), day))
                    .first()
                    .satisfies(span -> assertThat(units.temperature(span.celsius()))
                            .as("on the mat's page")
                            .isEqualTo(typed));
            assertThat(board.setPoints().on(room.m1(), day).map(units::temperature))
                    .as("on racks and weeks")
                    .contains(typed);
            assertThat(spaces().board(TODAY, TODAY.plusDays(most + 1)).readyAt(room.m1(), day).stream()
                            .mapToObj(units::temperature))
                    .as("on the board at the counter")
                    .containsExactly(typed);
        }
    }

    @ParameterizedTest
    @CsvSource({"F, 50, 104", "C, 10, 40"})
    void what_lies_on_a_mat_lies_at_the_degree_that_was_typed_and_is_turned_with_it(String unit, int least, int most) {
        Units units = Units.of(unit, "cm");
        UUID sowing = room.tomsPeppers();
        for (int degree = least; degree <= most; degree++) {
            LocalDate day = TODAY.plusDays(degree);
            double typed = units.celsiusOf(degree);
            double another = units.celsiusOf(degree == most ? least : degree + 1);
            UUID stay = database().sql().transactionResult(tx -> {
                UUID laid = stays.layOnMat(
                        tx.dsl(),
                        sowing,
                        new PlaceAndDays(room.m1Place1(), new Slot(1, 4), day, day.plusDays(1)),
                        another,
                        ALL,
                        room.tom());
                new MatDayStore(audit(), new ClashStore(CropCatalogue.bundled()))
                        .setPoint(tx.dsl(), room.m1(), day, day.plusDays(1), typed, room.priya());
                return laid;
            });

            assertThat(database()
                            .sql()
                            .selectDistinct(QUARTER_DAY.CELSIUS)
                            .from(QUARTER_DAY)
                            .where(QUARTER_DAY.STAY_ID.eq(stay))
                            .fetch(QUARTER_DAY.CELSIUS))
                    .as("%d °%s", degree, unit)
                    .containsExactly(typed);
            LyingStay lying = new LyingStore(database(), CropCatalogue.bundled(), spaces())
                    .find(stay)
                    .orElseThrow();
            assertThat(lying.warm()).isEqualTo(WarmDays.throughout(day, day.plusDays(1), typed));
            assertThat(units.degrees(typed)).isEqualTo(degree);
        }
    }

    @ParameterizedTest
    @CsvSource({"F, 50, 104", "C, 10, 40"})
    void a_mats_thermostat_and_usual_set_point_are_kept_as_typed(String unit, int least, int most) {
        Units units = Units.of(unit, "cm");
        ShelvingStore shelving = new ShelvingStore(database().sql());
        for (int degree = least; degree < most; degree++) {
            double low = units.celsiusOf(degree);
            double high = units.celsiusOf(degree + 1);

            change(2 + degree - least, low, high, high);

            assertThat(shelving.mat(room.m1()).orElseThrow())
                    .extracting(
                            mat -> units.degrees(mat.lowC()),
                            mat -> units.degrees(mat.highC()),
                            mat -> units.degrees(mat.usualC()))
                    .containsExactly((long) degree, degree + 1L, degree + 1L);
        }
    }

    @Test
    void what_lies_together_on_a_mat_lies_at_one_set_point_to_the_tenth() {
        UUID first = room.tomsPeppers();
        UUID second = room.priyasTomatoes();
        database()
                .sql()
                .transaction(tx -> stays.layOnMat(tx.dsl(), first, spot(1), 27.2, new Band(24, 27), room.tom()));

        database().sql().transaction(tx -> stays.layOnMat(tx.dsl(), second, spot(3), 24, new Band(24, 30), room.tom()));

        assertThat(database()
                        .sql()
                        .selectDistinct(QUARTER_DAY.CELSIUS)
                        .from(QUARTER_DAY)
                        .fetch(QUARTER_DAY.CELSIUS))
                .containsExactly(27.2);
    }

    private PlaceAndDays spot(int firstQuarter) {
        return new PlaceAndDays(room.m1Place1(), new Slot(firstQuarter, 2), TODAY, TODAY.plusDays(5));
    }

    private SpaceStore spaces() {
        return new SpaceStore(database());
    }

    private void change(int version, double lowC, double highC, double usualC) {
        MatDraft draft = new MatDraft("M1", 1, 2, lowC, highC, 45, usualC);
        done(mats.change(room.m1(), version, draft, room.priya(), TODAY));
    }
}
