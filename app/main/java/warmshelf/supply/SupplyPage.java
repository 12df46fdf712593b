package warmshelf.supply;

import java.util.List;
import java.util.UUID;
import warmshelf.words.Choice;
import warmshelf.words.Units;

/**
 * The season's shopping list.
 *
 * @param sowings how many it serves
 * @param form of a new promise
 * @param id under which the new promise will be kept, so that it counts once
 * @param whose for the group, or the member's own
 */
record SupplyPage(
        ShoppingList list,
        List<String> cautions,
        int season,
        int sowings,
        PromiseForm form,
        UUID id,
        List<Choice> items,
        List<Choice> whose,
        Units units) {}
