package warmshelf.plan.engine;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.words.Message;
import warmshelf.words.Units;

/**
 * A request that got no place.
 *
 * @param reason why
 * @param change the cheapest change that would place it, as things stand in the plan
 */
public record Refused(String request, NoPlaceReason reason, PlaceChange change) implements Message {

    /** Why, and then what would help. */
    @Override
    public String words(Units units) {
        return Stream.of(reason, change)
                .map(each -> each.words(units))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
