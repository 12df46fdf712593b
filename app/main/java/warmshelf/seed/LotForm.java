package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.MaturityForm;
import warmshelf.crop.RaisedFrom;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** A lot as it is typed in: crop, variety, year, seeds, whose, treated, note. */
public final class LotForm {
    public static final int LONGEST_VARIETY = 80;
    public static final int LONGEST_NOTE = 400;
    public static final int MOST_SEEDS = 1_000_000;
    private static final int OLDEST_YEAR = 1950;

    private final FormReader reader;
    private final @Nullable NewLot lot;
    private final Optional<DaysToMaturity> maturity;

    private LotForm(FormReader reader, @Nullable NewLot lot, Optional<DaysToMaturity> maturity) {
        this.reader = reader;
        this.lot = lot;
        this.maturity = maturity;
    }

    /** Nothing typed yet: the person's own seed, of this season. */
    public static LotForm blank(int season) {
        return new LotForm(
                new FormReader(Map.of(
                        "owner",
                        List.of("mine"),
                        "year",
                        List.of(String.valueOf(season)),
                        "source",
                        List.of(SeedSource.PACKET.word()),
                        "storage",
                        List.of(StorageKind.UNKNOWN.word()),
                        "maturityBasis",
                        List.of(Basis.TRANSPLANTING.word()))),
                null,
                Optional.empty());
    }

    /**
     * A form as it was typed.
     *
     * @param latestYear the latest year a packet can be packed for: this year's, or the season's
     * @param typist whose seed it is when it is 'mine'
     */
    public static LotForm of(
            Map<String, List<String>> typed, CropCatalogue crops, int latestYear, UUID typist, Units units) {
        FormReader reader = new FormReader(typed);
        String cropId = reader.text("crop");
        if (crops.find(cropId)
                .filter(crop -> crop.raisedFrom() == RaisedFrom.SEED)
                .isEmpty()) {
            reader.refuse("crop", SAY.cropUnknown());
        }
        NewLot lot = new NewLot(
                cropId,
                reader.requiredText("variety", SAY.varietyField(), LONGEST_VARIETY),
                reader.year("year", SAY.yearField(), OLDEST_YEAR, latestYear),
                reader.optionalWholeNumber("seeds", SAY.seedsLeftField(), 0, MOST_SEEDS)
                        .orElse(null),
                reader.choice("owner", SAY.ownerField(), List.of("mine", "group"))
                                .equals("mine")
                        ? typist
                        : null,
                reader.ticked("treated"),
                reader.optionalText("note", SAY.noteField(), LONGEST_NOTE),
                KeepingForm.source(reader),
                KeepingForm.storage(reader, units));
        Optional<DaysToMaturity> maturity = MaturityForm.read(reader);
        return new LotForm(reader, reader.ok() ? lot : null, maturity);
    }

    /** The lot, where everything typed can be used. */
    public Optional<NewLot> lot() {
        return Optional.ofNullable(lot);
    }

    /** How soon the packet says that its variety bears; empty where it does not say. */
    Optional<DaysToMaturity> maturity() {
        return maturity;
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
