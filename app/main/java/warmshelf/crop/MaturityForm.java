package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The part of a form that says in how many days the first harvest comes. */
public final class MaturityForm {
    public static final int MOST_DAYS = 400;
    public static final List<Choice> BASES = Arrays.stream(Basis.values())
            .map(basis -> new Choice(basis.word(), SAY.basis(basis.words())))
            .toList();

    private MaturityForm() {}

    /** The days; empty where none were typed. One number is a range of itself, counted from planting out unless said. */
    public static Optional<DaysToMaturity> read(FormReader reader) {
        Optional<Integer> min = reader.optionalWholeNumber("maturityMin", SAY.daysToHarvestField(), 1, MOST_DAYS);
        Optional<Integer> max = reader.optionalWholeNumber("maturityMax", SAY.daysAtMostField(), 1, MOST_DAYS);
        String basis = reader.text("maturityBasis").isEmpty()
                ? Basis.TRANSPLANTING.word()
                : reader.choice(
                        "maturityBasis",
                        SAY.countedFromField(),
                        BASES.stream().map(Choice::value).toList());
        if (min.isEmpty() && max.isPresent()) {
            reader.refuse("maturityMin", SAY.harvestWithoutFirst(max.get()));
        }
        if (min.isPresent() && max.isPresent() && max.get() < min.get()) {
            reader.refuse("maturityMax", SAY.mostBeforeFirst(max.get(), min.get()));
        }
        return reader.ok()
                ? min.map(days -> new DaysToMaturity(days, max.orElse(days), Basis.named(basis)))
                : Optional.empty();
    }

    /** Days as they would be typed. */
    static Map<String, List<String>> typed(Optional<DaysToMaturity> maturity) {
        Map<String, List<String>> typed = new TreeMap<>();
        typed.put(
                "maturityBasis",
                List.of(maturity.map(DaysToMaturity::basis)
                        .orElse(Basis.TRANSPLANTING)
                        .word()));
        maturity.ifPresent(days -> {
            typed.put("maturityMin", List.of(String.valueOf(days.min())));
            typed.put("maturityMax", List.of(String.valueOf(days.max())));
        });
        return typed;
    }
}
