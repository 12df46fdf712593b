package warmshelf.supply;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/**
 * Amounts by item, in millilitres or pieces; items of which nothing is needed are missing.
 *
 * @param amounts may hold parts of a piece, such as half a tray: pieces are made whole when they are shown
 */
public record Supplies(Map<SupplyItem, Double> amounts) {
    public Supplies {
        amounts = Map.copyOf(amounts);
    }

    /** All of them together. */
    static Supplies sum(Collection<Supplies> several) {
        Map<SupplyItem, Double> sum = new EnumMap<>(SupplyItem.class);
        several.forEach(each -> each.amounts.forEach((item, amount) -> sum.merge(item, amount, Double::sum)));
        return new Supplies(sum);
    }

    /** How much of an item: pieces are whole ones. */
    public double of(SupplyItem item) {
        double amount = amounts.getOrDefault(item, 0.0);
        // What lies a hair above a whole piece for want of digits is not another piece.
        return item.isVolume() ? amount : Math.ceil(amount - 1e-9);
    }
}
