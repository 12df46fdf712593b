package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceRequest;
import warmshelf.shelf.LightAbove;
import warmshelf.words.Choice;
import warmshelf.words.Units;

/** The places on mats to choose from by hand; those of held racks are left out. */
final class MatPlaceChoices {
    private MatPlaceChoices() {}

    static List<Choice> of(SpaceCalendar board, Units units) {
        List<Choice> places = new ArrayList<>();
        for (MatSpace mat : board.mats()) {
            for (int number = 1; number <= mat.places().size() && !board.isClosed(mat.id()); number++) {
                places.add(new Choice(mat.places().get(number - 1).toString(), words(mat, number, units)));
            }
        }
        return places;
    }

    /** The parts of a place that something can take. */
    static List<Choice> partsFor(SpaceRequest request) {
        return Slot.of(request.quarters()).stream()
                .map(slot -> new Choice(String.valueOf(slot.firstQuarter()), slot.words()))
                .toList();
    }

    private static String words(MatSpace mat, int number, Units units) {
        String holds = SAY.matPlaceHolds(
                mat.name(), number, mat.where(), mat.thermostat().words(units));
        return mat.light() == LightAbove.NOT_KNOWN
                ? holds
                : SAY.withLight(holds, mat.light().words());
    }
}
