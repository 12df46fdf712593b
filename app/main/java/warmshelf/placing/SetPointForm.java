package warmshelf.placing;

import warmshelf.web.FormReader;
import warmshelf.words.Units;

/** Reads a set-point as typed in the reader's own unit. */
public final class SetPointForm {
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
        boolean fahrenheit = units.temperature().equals("F");
        return form.wholeNumber(
                "celsius", "The set-point in °" + units.temperature(), fahrenheit ? 50 : 10, fahrenheit ? 104 : 40);
    }
}
