package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;

class SpaceAfterTickTest {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);
    private static final LocalDate LIGHT_UNTIL = LocalDate.of(2027, 5, 1);
    private static final Slot LEFT = new Slot(1, 2);
    private static final UUID PLACE = UUID.randomUUID();

    /**
     * What lies: 'mat' since ten days, 'booked' under a light from five days on, 'lit' under a light since five days. What is
     * told to do: 'end mat', 'begin booked' at once, 'lay' under the chosen light.
     */
    @ParameterizedTest(name = "{0} -> {2} by {3}, {4}, {5}: {6}")
    @CsvSource(
            delimiter = '|',
            value = {
                // looking moves nothing, taking back neither
                "SOWN         | 0 | EMERGED        | LOOK           | mat           |       |",
                "SOWN         | 0 | SOWN           | UNDONE         | mat booked    |       |",
                // a tray leaves the heat: its mat is free; the place booked for it begins at once
                "EMERGED      | 0 | UNDER_LIGHT    | UNDER_LIGHT    | mat           |       | end mat",
                "EMERGED      | 0 | UNDER_LIGHT    | UNDER_LIGHT    | mat booked    |       | begin booked, end mat",
                "EMERGED      | 0 | EMERGED        | OFF_HEAT       | mat booked    |       | begin booked, end mat",
                // or is given up, when it goes elsewhere or home
                "EMERGED      | 0 | UNDER_LIGHT    | UNDER_LIGHT    | mat booked    | place | end booked, end mat, lay",
                "EMERGED      | 0 | UNDER_LIGHT    | UNDER_LIGHT    | mat booked    | home  | end booked, end mat",
                "EMERGED      | 0 | UNDER_LIGHT    | UNDER_LIGHT    | mat           | place | end mat, lay",
                "EMERGED      | 0 | UNDER_LIGHT    | UNDER_LIGHT    | mat           | home  | end mat",
                // home with its grower: all that the group kept for it is free
                "EMERGED      | 0 | UNDER_LIGHT    | TAKEN_HOME     | mat           | home  | end mat",
                "EMERGED      | 0 | UNDER_LIGHT    | TAKEN_HOME     | mat booked    | home  | end booked, end mat",
                "IN_CELLS     | 9 | IN_CELLS       | TAKEN_HOME     | lit           | home  | end lit",
                "FED          | 0 | FED            | TAKEN_HOME     | lit           | home  | end lit",
                // a bag moved seed by seed stays on its mat, its first cells go under the light
                "SOWN         | 0 | SPROUTING      | MOVED_TO_CELLS | mat           |       |",
                "SOWN         | 0 | SPROUTING      | MOVED_TO_CELLS | mat           | place | lay",
                "SOWN         | 0 | SPROUTING      | MOVED_TO_CELLS | mat booked    |       | begin booked",
                "SPROUTING    | 3 | SPROUTING      | MOVED_TO_CELLS | mat lit       | place |",
                "SPROUTING    | 3 | SPROUTING      | MOVED_TO_CELLS | mat lit       |       |",
                // the last of it: the mat is free
                "SPROUTING    | 3 | IN_CELLS       | MOVED_TO_CELLS | mat lit       |       | end mat",
                "SPROUTING    | 3 | IN_CELLS       | MOVED_TO_CELLS | mat lit       | place | end mat, end lit, lay",
                // growing on moves nothing
                "UNDER_LIGHT  | 0 | FED            | FIRST_FEED     | lit           |       |",
                "FED          | 0 | POTTED_ON      | POTTED_ON      | lit           |       |",
                // outdoors, or over: every place is free
                "POTTED_ON    | 0 | HARDENING_OFF  | HARDENING_OFF  | lit           |       | end lit",
                "HARDENING_OFF| 0 | PLANTED_OUT    | PLANTED_OUT    |               |       |",
                "SOWN         | 0 | GIVEN_UP       | GAVE_UP        | mat booked    |       | end mat, end booked"
            })
    void each_tick_frees_and_takes_just_this(
            SowingStage before,
            int moved,
            SowingStage after,
            EntryStep step,
            @Nullable String lying,
            @Nullable String goes,
            @Nullable String told) {
        List<Stay> stays = lying == null
                ? List.of()
                : Arrays.stream(lying.split(" ")).map(this::stay).toList();
        Tick tick = tick(step, goes);

        List<SpaceAfterTick.Change> changes =
                new SpaceAfterTick(before, moved, after, tick, stays, LIGHT_UNTIL).changes();

        assertThat(changes.stream().map(this::words).collect(Collectors.joining(", ")))
                .isEqualTo(told == null ? "" : told);
    }

    private final List<Stay> made = new ArrayList<>();
    private final List<String> names = new ArrayList<>();

    private Stay stay(String name) {
        LocalDate from =
                name.equals("mat") ? DAY.minusDays(10) : name.equals("lit") ? DAY.minusDays(5) : DAY.plusDays(5);
        Stay stay = new Stay(
                UUID.randomUUID(),
                UUID.randomUUID(),
                UUID.randomUUID(),
                name.equals("mat") ? "mat" : "lit",
                name,
                LEFT,
                from,
                DAY.plusDays(30),
                1);
        made.add(stay);
        names.add(name);
        return stay;
    }

    private String words(SpaceAfterTick.Change change) {
        if (change instanceof SpaceAfterTick.Change.End end) {
            assertThat(end.freeFrom()).isEqualTo(DAY);
            return "end " + names.get(made.indexOf(end.stay()));
        }
        if (change instanceof SpaceAfterTick.Change.BeginEarlier begin) {
            assertThat(begin.from()).isEqualTo(DAY);
            return "begin " + names.get(made.indexOf(begin.stay()));
        }
        var spot = ((SpaceAfterTick.Change.LayUnderLight) change).spot();
        assertThat(List.of(spot.placeId(), spot.from(), spot.to())).containsExactly(PLACE, DAY, LIGHT_UNTIL);
        return "lay";
    }

    private static Tick tick(EntryStep step, @Nullable String goes) {
        Tick.LightPlace place = "place".equals(goes) ? new Tick.LightPlace(PLACE, LEFT) : null;
        return new Tick(
                UUID.randomUUID(),
                step,
                DAY,
                null,
                null,
                null,
                false,
                null,
                "",
                place,
                null,
                "home".equals(goes),
                null,
                "");
    }
}
