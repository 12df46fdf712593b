package warmshelf.label.paper;

import java.util.Optional;
import warmshelf.ReferenceTable;

/**
 * A coin to hold against a screen.
 *
 * @param name for example 'quarter dollar'
 * @param diameter in millimetres
 */
public record Coin(String name, double diameter) {

    /** A coin that people of a country have at hand; empty where the table knows none. */
    public static Optional<Coin> of(String country) {
        return ReferenceTable.rows("coins.csv").stream()
                .filter(row -> row.get("country").equals(country))
                .map(row -> new Coin(row.get("name"), Double.parseDouble(row.get("diameter_mm"))))
                .findFirst();
    }
}
