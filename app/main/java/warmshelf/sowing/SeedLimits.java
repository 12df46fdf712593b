package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.Optional;
import warmshelf.crop.BagFit;
import warmshelf.crop.Crop;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.Method;
import warmshelf.crop.SeedTrait;
import warmshelf.words.Units;

/** What a crop's seed does not bear of what is asked for, by the field of the form that asks it; for looking and for sending. */
record SeedLimits(Crop crop, HeatNeed heat) {

    Optional<AskRefusal> against(AskForm.Ask ask) {
        if (ask.method() == Method.BAG) {
            BagFit fit = BagFit.of(crop);
            if (fit != BagFit.FITS) {
                String name = crop.name();
                return Optional.of(new AskRefusal(
                        "method",
                        units -> fit == BagFit.TOO_FINE ? SAY.tooFineForABag(name) : SAY.rootsBearNoBag(name)));
            }
        }
        return ask.warm() && heat == HeatNeed.NO_MAT
                ? Optional.of(new AskRefusal("heat", this::noMat))
                : Optional.empty();
    }

    private String noMat(Units units) {
        String room = units.temperature(HeatNeed.ROOM_C);
        return crop.treatment()
                .trait(SeedTrait.Kind.SLEEPS_ABOVE)
                .map(trait -> SAY.sleepsOnAMat(crop.name(), room, above(trait, units)))
                .orElseGet(() -> crop.treatment()
                        .trait(SeedTrait.Kind.FEWER_ABOVE)
                        .map(trait -> SAY.fewerOnAMat(crop.name(), room, above(trait, units)))
                        .orElseThrow());
    }

    private static String above(SeedTrait trait, Units units) {
        return units.temperature(java.util.Objects.requireNonNull(trait.low()));
    }
}
