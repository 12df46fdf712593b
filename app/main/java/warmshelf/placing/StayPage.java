package warmshelf.placing;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * A stay, with the form that moves it and the one that frees its place.
 *
 * @param over whether it has ended
 * @param goesOn the stay that goes on where it was carried to; null: none
 * @param begun whether it lies there already
 * @param groups places it can be moved to, by rack
 * @param spot the place chosen
 * @param steps moves by a day or a week, as links
 * @param freeing the form that frees its place
 * @param back where to go on after a change, or empty
 */
record StayPage(
        LyingStay lying,
        Stay stay,
        boolean over,
        @Nullable UUID goesOn,
        boolean mayMove,
        boolean begun,
        boolean mayTakeBack,
        List<MoveReader.PlaceGroup> groups,
        String spot,
        List<Choice> steps,
        FormReader form,
        FormReader freeing,
        String back) {
    static final String TEMPLATE = "placing/stay.peb";
}
