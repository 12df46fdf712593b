package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import java.util.stream.Stream;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.StayWarmth;
import warmshelf.allocation.WarmDays;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads where a coordinator wants a request to lie. */
final class PlacementForm {
    private static final int FARTHEST_DAYS = 366;

    private final FormReader reader;
    private final SpaceRequest request;
    private final SpaceCalendar board;
    private final LocalDate today;
    private final Units units;

    PlacementForm(
            Map<String, List<String>> typed, SpaceRequest request, SpaceCalendar board, LocalDate today, Units units) {
        this.reader = new FormReader(typed);
        this.request = request;
        this.board = board;
        this.today = today;
        this.units = units;
    }

    FormReader reader() {
        return reader;
    }

    /** Where it is to lie and how warm, as the mat is set or else as is typed; empty when something typed cannot be taken. */
    Optional<Placement> placement(DoubleToIntFunction daysAt) {
        Optional<MatSpace> mat = mat();
        LocalDate from = reader.date("from", SAY.firstDayField());
        if (reader.ok() && from.isBefore(today)) {
            reader.refuse("from", SAY.firstDayPassed(from, today));
        }
        if (reader.ok() && from.isAfter(today.plusDays(FARTHEST_DAYS))) {
            reader.refuse("from", SAY.firstDayTooFar(from, today, today.plusDays(FARTHEST_DAYS)));
        }
        boolean usual = reader.text("celsius").isEmpty();
        double typed = usual ? 0 : SetPointForm.celsius(reader, units, offered());
        Slot slot = slot();
        if (!reader.ok() || mat.isEmpty()) {
            return Optional.empty();
        }
        StayWarmth warmth = new StayWarmth(board, mat.get(), request.band());
        double celsius = usual ? warmth.usual() : typed;
        if (!request.band().contains(celsius)) {
            reader.refuse(
                    "celsius",
                    SAY.setPointUnfit(
                            units.temperature(celsius),
                            units.temperatureRange(
                                    request.band().lowC(), request.band().highC())));
            return Optional.empty();
        }
        WarmDays warm = warmth.from(from, celsius, daysAt);
        return Optional.of(new Placement(mat.get(), new PlaceAndDays(placeId(), slot, from, warm.to()), warm));
    }

    /** The set-point of an offer that was taken, in degrees Celsius; 0 where none was. */
    private double offered() {
        String sent = reader.text("offered");
        return sent.matches("[0-9]{1,2}([.][0-9])?") ? Double.parseDouble(sent) : 0;
    }

    private Optional<MatSpace> mat() {
        UUID place = placeId();
        Optional<MatSpace> mat = board.mats().stream()
                .filter(each -> each.places().contains(place))
                .findFirst();
        if (mat.isEmpty()) {
            reader.refuse("place", SAY.placeNoMat());
        }
        return mat;
    }

    /** The place that was named; the id of none where it was none. */
    UUID placeId() {
        try {
            return UUID.fromString(reader.text("place"));
        } catch (IllegalArgumentException notAnId) {
            return new UUID(0, 0);
        }
    }

    private Slot slot() {
        List<Slot> slots = Slot.of(request.quarters());
        if (slots.size() == 1) {
            return slots.get(0);
        }
        String word = reader.choice(
                "quarter",
                SAY.partOfPlaceField(),
                slots.stream()
                        .flatMap(slot -> Stream.of(String.valueOf(slot.firstQuarter())))
                        .toList());
        return reader.problems().containsKey("quarter")
                ? slots.get(0)
                : new Slot(Integer.parseInt(word), request.quarters());
    }

    /** A place chosen by hand or from an offer. */
    record Placement(MatSpace mat, PlaceAndDays spot, WarmDays warm) {}
}
