package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.List;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.MaturityForm;
import warmshelf.words.Choice;
import warmshelf.words.Units;

/**
 * The form of a new lot.
 *
 * @param owners whose it can be
 * @param bases from which day the days on its packet count
 * @param degree the sign of the visitor's temperatures
 */
record NewLotPage(
        LotForm form,
        List<Choice> crops,
        List<Choice> owners,
        List<Choice> sources,
        List<Choice> storages,
        List<Choice> bases,
        String degree) {
    private static final List<Choice> OWNERS =
            List.of(new Choice("mine", SAY.mine()), new Choice("group", SAY.ofTheGroup()));

    static NewLotPage of(LotForm form, CropCatalogue crops, Units units) {
        return new NewLotPage(
                form,
                crops.fromSeed().stream()
                        .map(crop -> new Choice(crop.id(), crop.name()))
                        .toList(),
                OWNERS,
                KeepingForm.SOURCES,
                KeepingForm.STORAGES,
                MaturityForm.BASES,
                units.degree());
    }
}
