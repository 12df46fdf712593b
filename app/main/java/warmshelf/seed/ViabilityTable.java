package warmshelf.seed;

import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;
import warmshelf.crop.Crop;
import warmshelf.crop.Standing;

/**
 * The published constants of the viability equation, by species ({@code db/reference/seed-ageing.csv}).
 *
 * <p>Rows that the table itself marks as written from memory are left out: nobody has checked them against the papers.
 */
final class ViabilityTable {
    // Quoted as universal for seed that bears drying in Demir et al. 2009; for rows that name no temperature terms.
    private static final double UNIVERSAL_CH = 0.0329;
    private static final double UNIVERSAL_CQ = 0.000478;

    private static final List<ViabilityEquation> EQUATIONS = ReferenceTable.rows("seed-ageing.csv").stream()
            .filter(row ->
                    row.get("code").equals("constants") && Standing.named(row.get("standing")) != Standing.FROM_MEMORY)
            .map(ViabilityTable::equation)
            .toList();

    private ViabilityTable() {}

    /** The equation for the crop's species; a cultivated form, such as 'Beta vulgaris (Cicla)', is of its species. */
    static Optional<ViabilityEquation> of(Crop crop) {
        return EQUATIONS.stream()
                .filter(equation -> crop.species().startsWith(equation.species()))
                .findFirst();
    }

    private static ViabilityEquation equation(CSVRecord row) {
        return new ViabilityEquation(
                row.get("species"),
                Double.parseDouble(row.get("KE")),
                Double.parseDouble(row.get("CW")),
                orElse(row.get("CH"), UNIVERSAL_CH),
                orElse(row.get("CQ"), UNIVERSAL_CQ),
                row.get("source_title"),
                row.get("source_url"));
    }

    private static double orElse(String cell, double otherwise) {
        return cell.isEmpty() ? otherwise : Double.parseDouble(cell);
    }
}
