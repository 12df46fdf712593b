package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Choice;
import warmshelf.words.Units;

/**
 * The form in which a coordinator writes a crop.
 *
 * @param crop the crop as it holds now; null: a new one
 * @param inReference whether the reference has it too
 * @param bases from which day its days to maturity count
 * @param emergences how its emergence may be said
 * @param relatives crops whose seed it may behave like
 * @param degree the sign of the visitor's temperatures
 * @param inInches whether the visitor reads inches
 */
record CropFormPage(
        CropForm form,
        @Nullable Crop crop,
        boolean inReference,
        List<Choice> hardiness,
        List<Choice> light,
        List<Choice> soaks,
        List<TreatmentForm.Tick> hazards,
        List<Choice> bases,
        List<Choice> emergences,
        List<Choice> relatives,
        String degree,
        boolean inInches) {
    private static final List<Choice> HARDINESS = Arrays.stream(Hardiness.values())
            .map(each -> new Choice(each.words(), SAY.hardinessWith(each.words(), each.examples())))
            .toList();
    private static final List<Choice> LIGHT = List.of(
            new Choice("yes", SAY.needsLight()),
            new Choice("no", SAY.wantsDark()),
            new Choice("indifferent", SAY.comesUpEitherWay()),
            new Choice("unknown", SAY.lightNotKnown()));
    private static final List<Choice> OF_NEW =
            List.of(new Choice(WarmthForm.STATED, SAY.asTradeSays()), new Choice(WarmthForm.LIKE, SAY.likeRelative()));
    private static final List<Choice> OF_REFERENCE =
            List.of(new Choice(WarmthForm.REFERENCE, SAY.asReference()), OF_NEW.get(0), OF_NEW.get(1));

    static CropFormPage of(CropForm form, @Nullable Crop crop, boolean inReference, Units units) {
        return new CropFormPage(
                form,
                crop,
                inReference,
                HARDINESS,
                LIGHT,
                TreatmentForm.SOAKS,
                TreatmentForm.hazards(),
                MaturityForm.BASES,
                inReference ? OF_REFERENCE : OF_NEW,
                WarmthForm.relatives().stream()
                        .filter(other -> crop == null || !other.id().equals(crop.id()))
                        .map(other -> new Choice(other.id(), other.name()))
                        .toList(),
                units.degree(),
                units.inInches());
    }
}
