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

    private CropCatalogue(Collection<CSVRecord> rows, Responses sources) {
        for (CSVRecord row : rows) {
            Crop crop = CropTable.crop(row);
            crops.put(crop.id(), crop);
            responses.put(crop.id(), sources.of(row));
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

    private static final class Bundled {
        static final CropCatalogue CATALOGUE = new CropCatalogue(ReferenceTable.rows("crops.csv"), new Responses());
    }
}
