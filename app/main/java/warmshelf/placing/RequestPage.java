package warmshelf.placing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * One request.
 *
 * @param decided who decided on it last; null: nobody has
 * @param offers where it could lie, best first; none once it is decided on
 * @param noSpace why it finds no space, or empty
 * @param held the racks that are held while somebody chooses
 * @param refusal the form that refuses it
 * @param warnings what placing it as typed would do to a trial that it is of, or empty
 * @param warnedTyped says in the form that these were shown
 * @param places all places on mats, to choose another one
 */
record RequestPage(
        History history,
        Sowing sowing,
        SpaceRequest request,
        RequestStore.@Nullable Decided decided,
        List<Offered> offers,
        String noSpace,
        List<RackHold> held,
        FormReader form,
        FormReader refusal,
        List<String> warnings,
        String warnedTyped,
        List<Choice> places,
        List<Choice> slots) {
    /** Where it could lie, with what that would do to a trial that it is of; {@code warned} says in the form that it was shown. */
    public record Offered(SpaceOffer offer, List<String> warnings, String warned) {}
}
