package warmshelf.crop;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * All crops that are known, each with its response to temperature: the reference horticulture, and over it and beside it what
 * the group's coordinators wrote.
 */
public final class CropCatalogue {
    private static final CropCatalogue BUNDLED = new CropCatalogue(() -> OwnHorticulture.NONE);

    private final Supplier<OwnHorticulture> own;
    private volatile @Nullable Made made;

    private record Made(OwnHorticulture of, Horticulture horticulture) {}

    private CropCatalogue(Supplier<OwnHorticulture> own) {
        this.own = own;
    }

    /** The catalogue that comes with the program, of no group. */
    public static CropCatalogue bundled() {
        return BUNDLED;
    }

    /**
     * A group's catalogue.
     *
     * @param own what the group wrote; asked at every question, and so quick: the same object as long as nothing changed
     */
    public static CropCatalogue with(Supplier<OwnHorticulture> own) {
        return new CropCatalogue(own);
    }

    private Horticulture now() {
        OwnHorticulture written = own.get();
        Made last = made;
        if (last == null || !last.of().equals(written)) {
            // Two threads may both make it; either one's is as good.
            last = new Made(written, Horticulture.reference().with(written));
            made = last;
        }
        return last.horticulture();
    }

    public Optional<Crop> find(String id) {
        return now().find(id);
    }

    /**
     * The crop of an id that is known to exist.
     *
     * @throws IllegalArgumentException when it does not
     */
    public Crop get(String id) {
        return find(id).orElseThrow(() -> unknown(id));
    }

    /** The crop of an id, or a {@linkplain Crop#unlisted stand-in} of that name. */
    public Crop orUnlisted(String id) {
        return find(id).orElseGet(() -> Crop.unlisted(id));
    }

    /** The same, with the days to the first harvest of this variety where they are known. */
    public Crop ofVariety(String id, String variety) {
        Horticulture now = now();
        Crop crop = now.find(id).orElseGet(() -> Crop.unlisted(id));
        return now.variety(id, variety)
                .map(known -> crop.withMaturity(Optional.of(known.maturity().asOfOneVariety())))
                .orElse(crop);
    }

    /** Whether anything is known of a crop. */
    public boolean lists(Crop crop) {
        return find(crop.id()).isPresent();
    }

    /** Every crop to choose from, in the table's order: warm vegetables, cool ones, herbs, flowers; then the group's own. */
    public List<Crop> all() {
        return now().offered();
    }

    /** Those of them that can be sown. */
    public List<Crop> fromSeed() {
        return all().stream()
                .filter(crop -> crop.raisedFrom() == RaisedFrom.SEED)
                .toList();
    }

    /** Those that nobody can sow, because they are raised from slips. */
    public List<Crop> fromSlips() {
        return all().stream()
                .filter(crop -> crop.raisedFrom() == RaisedFrom.SLIPS)
                .toList();
    }

    /** What the reference says of a crop, whatever the group wrote. */
    public Optional<Crop> reference(String id) {
        return Horticulture.reference().find(id);
    }

    /** What a coordinator wrote of a crop, also where it was taken back. */
    public Optional<OwnCrop> written(String id) {
        return now().written(id);
    }

    /** What lists of poisonous plants say of a reference crop; none: it was looked up in none. */
    public List<HazardClaim> hazardClaims(String id) {
        return HazardClaim.bundled().getOrDefault(id, List.of());
    }

    /** A variety of which more is known than of its crop; capitals and spaces of its name do not count. */
    public Optional<Variety> variety(String cropId, String name) {
        return now().variety(cropId, name);
    }

    /** The varieties of a crop of which more is known. */
    public List<Variety> varieties(String cropId) {
        return now().varieties(cropId);
    }

    public TemperatureResponse responseOf(Crop crop) {
        TemperatureResponse response = now().response(crop.id());
        if (response == null) {
            throw unknown(crop.id());
        }
        return response;
    }

    private static IllegalArgumentException unknown(String id) {
        return new IllegalArgumentException("no crop has the id '" + id + "'");
    }
}
