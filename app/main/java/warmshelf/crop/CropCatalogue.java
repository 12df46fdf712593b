package warmshelf.crop;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import warmshelf.ReferenceTable;

/** All crops the reference horticulture knows, each with its response to temperature. */
public final class CropCatalogue {
    private final Map<String, Crop> crops = new LinkedHashMap<>();
    private final Map<String, TemperatureResponse> responses = new LinkedHashMap<>();
    private final Map<String, List<EmergenceDisagreement>> disagreements = new LinkedHashMap<>();

    private CropCatalogue(Collection<CSVRecord> rows, Responses sources) {
        EmergenceDisagreements reprints = EmergenceDisagreements.bundled();
        for (CSVRecord row : rows) {
            Crop crop = CropTable.crop(row);
            crops.put(crop.id(), crop);
            TemperatureResponse response = sources.of(row);
            responses.put(crop.id(), response);
            boolean byTrials = response instanceof TestedResponse;
            disagreements.put(crop.id(), byTrials ? reprints.of(row.get("emergence_table")) : List.of());
        }
    }

    /** The catalogue that comes with the program; read once, at first use. */
    public static CropCatalogue bundled() {
        return Bundled.CATALOGUE;
    }

    public Optional<Crop> find(String id) {
        return Optional.ofNullable(crops.get(id));
    }

    /**
     * The crop of an id that is known to exist.
     *
     * @throws IllegalArgumentException when it does not
     */
    public Crop get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no crop has the id '" + id + "'"));
    }

    /** The crop of an id, or a {@linkplain Crop#unlisted stand-in} of that name. */
    public Crop orUnlisted(String id) {
        return find(id).orElseGet(() -> Crop.unlisted(id));
    }

    /** Whether anything is known of a crop. */
    public boolean lists(Crop crop) {
        return crops.containsKey(crop.id());
    }

    /** Every crop, in the table's order: warm vegetables, cool ones, herbs, flowers. */
    public List<Crop> all() {
        return List.copyOf(crops.values());
    }

    public TemperatureResponse responseOf(Crop crop) {
        TemperatureResponse response = responses.get(crop.id());
        if (response == null) {
            throw new IllegalArgumentException("no crop has the id '" + crop.id() + "'");
        }
        return response;
    }

    /** Where reprints of the trials that a crop's days rest on print different figures; none where they rest on others. */
    public List<EmergenceDisagreement> disagreementsOf(Crop crop) {
        return disagreements.getOrDefault(crop.id(), List.of());
    }

    private static final class Bundled {
        static final CropCatalogue CATALOGUE = new CropCatalogue(ReferenceTable.rows("crops.csv"), new Responses());
    }
}
