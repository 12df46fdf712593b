package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import warmshelf.allocation.Band;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.Slot;
import warmshelf.placing.SetPointForm;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.shelf.WholeDegree;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads where a coordinator wants a request to lie in a plan. */
final class PlanEditForm {
    private final FormReader reader;
    private final SeasonQuestion question;
    private final Asked asked;
    private double celsius;

    PlanEditForm(Map<String, List<String>> typed, SeasonQuestion question, Asked asked) {
        reader = new FormReader(typed);
        this.question = question;
        this.asked = asked;
    }

    FormReader reader() {
        return reader;
    }

    double celsius() {
        return celsius;
    }

    /** What is typed before anybody types: where it lies in the plan, or its ideal day. */
    static FormReader filled(Optional<PlacedStay> stay, Asked asked, SetPointDays setPoints, Units units) {
        LocalDate from =
                stay.map(placed -> placed.days().from()).orElse(asked.wanted().ideal());
        double celsius = shown(stay, asked, setPoints);
        return new FormReader(Map.of(
                "place",
                List.of(stay.map(placed -> placed.mat() + "/" + placed.place()).orElse("")),
                "quarter",
                List.of(stay.map(placed -> String.valueOf(placed.slot().firstQuarter()))
                        .orElse("1")),
                "from",
                List.of(from.toString()),
                "celsius",
                List.of(String.valueOf(units.degrees(celsius)))));
    }

    /** The set-point on the first day as the form shows it before anybody types, in degrees Celsius. */
    static double shown(Optional<PlacedStay> stay, Asked asked, SetPointDays setPoints) {
        Band band = asked.wanted().band();
        Double set = stay.map(placed -> setPoints.on(placed.mat(), placed.days().from()))
                .orElse(null);
        return set == null ? band.middle() : set;
    }

    /** The places to choose from; those of held racks are left out. */
    static List<Choice> places(SeasonQuestion question, Units units) {
        List<Choice> places = new ArrayList<>();
        for (MatSpace mat : question.mats().values()) {
            int open =
                    question.held().containsKey(mat.name()) ? 0 : mat.places().size();
            for (int place = 1; place <= open; place++) {
                places.add(new Choice(
                        mat.name() + "/" + place,
                        SAY.matPlaceHolds(
                                mat.name(), place, mat.where(), mat.thermostat().words(units))));
            }
        }
        return places;
    }

    static List<Choice> slots(Asked asked) {
        return Slot.of(asked.wanted().quarters()).stream()
                .map(slot -> new Choice(String.valueOf(slot.firstQuarter()), slot.words()))
                .toList();
    }

    /**
     * The placement; empty when something typed cannot be taken.
     *
     * @param shown the set-point that the form showed, in degrees Celsius
     */
    Optional<PlacedStay> placement(Units units, double shown) {
        String place = reader.text("place");
        Optional<MatSpace> mat = mat(place);
        LocalDate from = reader.date("from", SAY.firstDayField());
        celsius = SetPointForm.celsius(reader, units, shown);
        Slot slot = slot();
        if (mat.isEmpty()) {
            RackHold hold =
                    question.held().get(place.contains("/") ? place.substring(0, place.lastIndexOf('/')) : place);
            reader.refuse(
                    "place", hold == null ? SAY.placeUnknown() : new Obstacle.RackTakesNothing(hold).words(units));
        }
        if (reader.ok()) {
            within(from);
        }
        OptionalInt days = asked.wanted().daysAt(WholeDegree.of(celsius));
        if (reader.ok() && days.isEmpty()) {
            reader.refuse(
                    "celsius",
                    SAY.setPointUnfit(
                            units.temperature(celsius), asked.wanted().band().words(units)));
        }
        if (!reader.ok() || mat.isEmpty() || days.isEmpty()) {
            return Optional.empty();
        }
        int number = Integer.parseInt(place.substring(place.lastIndexOf('/') + 1));
        DayRange range = new DayRange(from, from.plusDays(days.getAsInt()));
        return Optional.of(new PlacedStay(asked.wanted().id(), mat.get().name(), number, slot, range, null));
    }

    private void within(LocalDate from) {
        LocalDate earliest = asked.wanted().earliest();
        LocalDate latest = asked.wanted().latest();
        if (from.isBefore(earliest) || from.isAfter(latest)) {
            reader.refuse("from", SAY.firstDayUnfit(from, earliest, latest));
        }
    }

    private Optional<MatSpace> mat(String place) {
        return places(question, Units.METRIC).stream()
                .filter(choice -> choice.value().equals(place))
                .map(choice -> question.mats().get(place.substring(0, place.lastIndexOf('/'))))
                .findFirst();
    }

    private Slot slot() {
        List<Slot> slots = Slot.of(asked.wanted().quarters());
        if (slots.size() == 1) {
            return slots.get(0);
        }
        String chosen = reader.choice(
                "quarter",
                SAY.partOfPlaceField(),
                slots.stream().map(slot -> String.valueOf(slot.firstQuarter())).toList());
        return slots.stream()
                .filter(slot -> String.valueOf(slot.firstQuarter()).equals(chosen))
                .findFirst()
                .orElse(slots.get(0));
    }
}
