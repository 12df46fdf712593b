package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads a set-point as typed in the reader's own unit. */
public final class SetPointForm {
    private static final int LOWEST_C = 10;
    private static final int HIGHEST_C = 40;

    private SetPointForm() {}

    /** The field 'celsius' as typed: in degrees Celsius to a tenth. */
    public static double celsius(FormReader form, Units units) {
        return units.celsiusOf(typed(form, units));
    }

    /** The same where the form showed a set-point, in degrees Celsius, that stays what it is unless another is typed. */
    public static double celsius(FormReader form, Units units, double shown) {
        return units.celsiusOf(typed(form, units), shown);
    }

    private static int typed(FormReader form, Units units) {
        return form.wholeNumber("celsius", SAY.setPointField(units.degree()), (int) units.degrees(LOWEST_C), (int)
                units.degrees(HIGHEST_C));
    }
}
