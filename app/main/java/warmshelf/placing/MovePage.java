package warmshelf.placing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * A stay as it lies beside as it would lie.
 *
 * @param begun whether it lies there already
 * @param booked the place under a light that follows; null: none
 * @param conflict what changed since it was looked at; null: nothing
 * @param warnings what it would do to a trial that it is of, or empty
 * @param groups places it can be moved to, by rack
 * @param steps moves by a day or a week, as links
 * @param back where to go on afterwards, or empty
 */
record MovePage(
        LyingStay lying,
        Stay stay,
        boolean begun,
        MoveOutlook outlook,
        @Nullable Stay booked,
        @Nullable String conflict,
        List<String> warnings,
        String spot,
        List<MoveReader.PlaceGroup> groups,
        FormReader form,
        List<Choice> steps,
        String back) {}
