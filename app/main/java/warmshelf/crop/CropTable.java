package warmshelf.crop;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;

/** Reads one row of the crop table. Empty cells and cells in words stay unknown: nothing is made up for them. */
final class CropTable {
    private final Map<String, List<SeedTrait>> traits = SeedTrait.bundled();

    Crop crop(CSVRecord row) {
        return new Crop(
                row.get("id"),
                row.get("crop"),
                row.get("species"),
                Hardiness.named(row.get("hardiness")),
                wholeNumber(row, "weeks_indoors_min"),
                wholeNumber(row, "weeks_indoors_max"),
                wholeNumber(row, "plant_out_offset_days"),
                wholeNumber(row, "plant_out_offset_days_latest"),
                decimalIfAny(row, "min_night_c"),
                decimalIfAny(row, "depth_mm"),
                SeedLight.named(row.get("light")),
                RaisedFrom.named(row.get("raised_from")),
                treatment(row),
                hazards(row.get("id")),
                maturity(row),
                wholeNumberIfAny(row, "fsa_min_germ_percent"),
                wholeNumberIfAny(row, "seed_life_years"),
                CropFigure.named(row.get("common_practice")),
                row.get("note"),
                row.get("source_title"),
                row.get("source_url"),
                Standing.named(row.get("standing")));
    }

    private static Set<CropHazard> hazards(String id) {
        return HazardClaim.bundled().getOrDefault(id, List.of()).stream()
                .flatMap(claim -> claim.hazard().stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(CropHazard.class)));
    }

    private SeedTreatment treatment(CSVRecord row) {
        return new SeedTreatment(
                Soak.named(row.get("soak")),
                span(row, "soak_hours_min", "soak_hours_max"),
                row.get("nick").equals("yes"),
                span(row, "cold_weeks_min", "cold_weeks_max"),
                traits.getOrDefault(row.get("id"), List.of()),
                "");
    }

    private static SeedTreatment.Span span(CSVRecord row, String least, String most) {
        return new SeedTreatment.Span(wholeNumberIfAny(row, least), wholeNumberIfAny(row, most));
    }

    /** Perennials give years in words ('2-3 years'): no first harvest this season, so no days. */
    private static Optional<DaysToMaturity> maturity(CSVRecord row) {
        Integer min = wholeNumberIfAny(row, "dtm_min");
        Integer max = wholeNumberIfAny(row, "dtm_max");
        if (min == null || max == null) {
            return Optional.empty();
        }
        Basis basis = row.get("dtm_basis").equals("sowing") ? Basis.SOWING : Basis.TRANSPLANTING;
        return Optional.of(new DaysToMaturity(min, max, basis));
    }

    private static int wholeNumber(CSVRecord row, String column) {
        Integer number = wholeNumberIfAny(row, column);
        if (number == null) {
            throw new IllegalStateException("the crop table has no %s for %s".formatted(column, row.get("id")));
        }
        return number;
    }

    private static @Nullable Integer wholeNumberIfAny(CSVRecord row, String column) {
        String cell = row.get(column);
        return cell.matches("-?\\d+") ? Integer.valueOf(cell) : null;
    }

    private static @Nullable Double decimalIfAny(CSVRecord row, String column) {
        String cell = row.get(column);
        return cell.matches("-?\\d+(\\.\\d+)?") ? Double.valueOf(cell) : null;
    }
}
