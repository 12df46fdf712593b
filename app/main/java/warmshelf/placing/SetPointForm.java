package warmshelf.placing;

import warmshelf.web.FormReader;
import warmshelf.words.Units;

/** Reads a set-point as typed in the reader's own unit. */
public final class SetPointForm {
    private SetPointForm() {}

    /** The field 'celsius', in whole degrees Celsius, the step in which mats are set. */
    public static int celsius(FormReader form, Units units) {
        boolean fahrenheit = units.temperature().equals("F");
        return units.wholeCelsiusOf(form.wholeNumber(
                "celsius", "The set-point in °" + units.temperature(), fahrenheit ? 50 : 10, fahrenheit ? 104 : 40));
    }

    /** A sentence that begins with what a notice says, and tells what the step made of the set-point where it is not as typed. */
    public static String told(String notice, FormReader form, Units units) {
        String typed = form.text("celsius");
        String stepped = typed.matches("[0-9]{1,3}") ? units.steppedWords(Integer.parseInt(typed)) : "";
        return stepped.isEmpty() ? notice : notice + " " + stepped;
    }
}
