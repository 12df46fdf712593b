package warmshelf.crop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.EmergenceDisagreement.Outcome;
import warmshelf.crop.EmergenceDisagreement.Print;
import warmshelf.words.TemperatureUnit;

/** Where the reprints of the trials print different figures, by vegetable of the table, coldest first. */
final class EmergenceDisagreements {
    private final Map<String, List<EmergenceDisagreement>> byVegetable = new LinkedHashMap<>();

    static EmergenceDisagreements bundled() {
        EmergenceDisagreements found = new EmergenceDisagreements();
        Map<String, TreeMap<Double, EmergenceDisagreement>> cells = new LinkedHashMap<>();
        for (CSVRecord row : ReferenceTable.rows("emergence-disagreements.csv")) {
            double celsius = TemperatureUnit.FAHRENHEIT.toCelsius(Double.parseDouble(row.get("temp_f")));
            Print first = print(row, "first_outcome", "first_days", "first_days");
            Print other = print(row, "other_outcome", "other_days", "other_percent");
            cells.computeIfAbsent(row.get("crop"), name -> new TreeMap<>())
                    .merge(
                            celsius,
                            new EmergenceDisagreement(celsius, List.of(first, other)),
                            EmergenceDisagreements::joined);
        }
        cells.forEach((vegetable, each) -> found.byVegetable.put(vegetable, List.copyOf(each.values())));
        return found;
    }

    /** Two rows of one cell: each print once. */
    private static EmergenceDisagreement joined(EmergenceDisagreement one, EmergenceDisagreement other) {
        List<Print> printed = new ArrayList<>(Stream.concat(one.printed().stream(), other.printed().stream())
                .distinct()
                .toList());
        return new EmergenceDisagreement(one.celsius(), printed);
    }

    private static Print print(CSVRecord row, String outcomeColumn, String daysColumn, String percentColumn) {
        Outcome outcome = Outcome.valueOf(row.get(outcomeColumn).toUpperCase(Locale.ROOT));
        return switch (outcome) {
            case DAYS -> new Print(outcome, Integer.parseInt(row.get(daysColumn)));
            case SHARE -> new Print(outcome, Integer.parseInt(row.get(percentColumn)));
            case NONE, UNTESTED -> new Print(outcome, 0);
        };
    }

    /** None for a vegetable whose reprints agree. */
    List<EmergenceDisagreement> of(String vegetable) {
        return byVegetable.getOrDefault(vegetable, List.of());
    }
}
