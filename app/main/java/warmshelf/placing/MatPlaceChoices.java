package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import warmshelf.allocation.MatSpace;
import warmshelf.shelf.LightAbove;
import warmshelf.words.Choice;
import warmshelf.words.Units;

/** The places on mats to choose from by hand. */
final class MatPlaceChoices {
    private MatPlaceChoices() {}

    static List<Choice> of(List<MatSpace> mats, Units units) {
        List<Choice> places = new ArrayList<>();
        for (MatSpace mat : mats) {
            for (int number = 1; number <= mat.places().size(); number++) {
                places.add(new Choice(mat.places().get(number - 1).toString(), words(mat, number, units)));
            }
        }
        return places;
    }

    private static String words(MatSpace mat, int number, Units units) {
        String holds = SAY.matPlaceHolds(
                mat.name(), number, mat.where(), mat.thermostat().words(units));
        return mat.light() == LightAbove.NOT_KNOWN
                ? holds
                : SAY.withLight(holds, mat.light().words());
    }
}
