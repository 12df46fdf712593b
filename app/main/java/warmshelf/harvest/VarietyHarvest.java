package warmshelf.harvest;

import static warmshelf.harvest.HarvestSentences.SAY;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import warmshelf.words.Numbers;

/**
 * What growers say of a variety, over members and years.
 *
 * @param growers who said something, each season for itself
 * @param again how many of those who said whether would grow it again
 * @param ofAgain how many said whether
 * @param gave how many said that it gave enough or plenty
 * @param ofGave how many said how much
 * @param tasted how many said that it tasted good or very good
 * @param ofTasted how many said how it tasted
 * @param kilograms of those who weighed; 0 where nobody did
 * @param troubles what went wrong, in the growers' words
 */
public record VarietyHarvest(
        String cropId,
        String variety,
        int growers,
        int again,
        int ofAgain,
        int gave,
        int ofGave,
        int tasted,
        int ofTasted,
        double kilograms,
        List<String> troubles) {

    /** One for each variety, by crop and name; capitals do not set varieties apart. */
    public static List<VarietyHarvest> of(List<HarvestStore.Said> said) {
        Map<String, List<HarvestStore.Said>> alike = said.stream()
                .collect(Collectors.groupingBy(
                        each -> each.cropId() + " " + each.variety().toLowerCase(Locale.ROOT),
                        TreeMap::new,
                        Collectors.toList()));
        return alike.values().stream()
                .map(VarietyHarvest::ofOne)
                .sorted(Comparator.comparing(VarietyHarvest::cropId).thenComparing(VarietyHarvest::variety))
                .toList();
    }

    private static VarietyHarvest ofOne(List<HarvestStore.Said> said) {
        List<HarvestNote> notes = said.stream().map(HarvestStore.Said::note).toList();
        return new VarietyHarvest(
                said.get(0).cropId(),
                said.get(0).variety(),
                said.size(),
                count(notes, note -> note.again() == HarvestAnswer.Again.AGAIN),
                count(notes, note -> note.again() != null),
                count(
                        notes,
                        note -> note.amount() == HarvestAnswer.Amount.ENOUGH
                                || note.amount() == HarvestAnswer.Amount.PLENTY),
                count(notes, note -> note.amount() != null),
                count(notes, note -> note.taste() != null && note.taste() != HarvestAnswer.Taste.POOR),
                count(notes, note -> note.taste() != null),
                notes.stream()
                        .mapToDouble(note -> note.kilograms() == null ? 0 : note.kilograms())
                        .sum(),
                notes.stream()
                        .map(HarvestNote::trouble)
                        .filter(trouble -> !trouble.isEmpty())
                        .distinct()
                        .toList());
    }

    private static int count(List<HarvestNote> notes, Predicate<HarvestNote> which) {
        return (int) notes.stream().filter(which).count();
    }

    /** For example 'Again: 3 of 4 who grew it. Enough or plenty: 2 of 3.' */
    public String words() {
        List<String> words = new ArrayList<>();
        if (ofAgain > 0) {
            words.add(SAY.again(again, ofAgain));
        }
        if (ofGave > 0) {
            words.add(SAY.gave(gave, ofGave));
        }
        if (ofTasted > 0) {
            words.add(SAY.tasted(tasted, ofTasted));
        }
        if (kilograms > 0) {
            words.add(SAY.weighed(Numbers.oneDecimalAtMost(kilograms)));
        }
        if (!troubles.isEmpty()) {
            words.add(SAY.trouble(String.join("; ", troubles)));
        }
        return String.join(" ", words);
    }
}
