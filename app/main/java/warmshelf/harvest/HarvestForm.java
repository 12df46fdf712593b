package warmshelf.harvest;

import static warmshelf.harvest.HarvestSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;

/** Reads what a grower says of several sowings at once: each field carries the sowing's id. */
final class HarvestForm {
    static final int LONGEST_TROUBLE = 400;
    private static final double MOST_KILOGRAMS = 5_000;

    private final FormReader reader;
    private final LocalDate today;

    HarvestForm(Map<String, List<String>> typed, LocalDate today) {
        this.reader = new FormReader(typed);
        this.today = today;
    }

    FormReader reader() {
        return reader;
    }

    /** One note for each; ask the reader whether they can be used. */
    List<HarvestNote> notes(List<HarvestStore.PlantedOut> sowings) {
        List<HarvestNote> notes = new ArrayList<>();
        for (HarvestStore.PlantedOut sowing : sowings) {
            notes.add(note(sowing));
        }
        return notes;
    }

    private HarvestNote note(HarvestStore.PlantedOut sowing) {
        String of = sowing.variety().isEmpty() ? sowing.cropId() : sowing.variety();
        UUID id = sowing.sowingId();
        LocalDate first = day("first-" + id, SAY.firstHarvestField(of), sowing.plantedOutOn());
        LocalDate last = day("last-" + id, SAY.lastHarvestField(of), sowing.plantedOutOn());
        if (first != null && last != null && last.isBefore(first)) {
            reader.refuse("last-" + id, SAY.lastBeforeFirst(of, last, first));
        }
        double kilograms = reader.optionalDecimal("kilograms-" + id, SAY.kilogramsField(of), 0, MOST_KILOGRAMS)
                .orElse(Double.NaN);
        return new HarvestNote(
                id,
                answer("again-" + id, SAY.againField(of), HarvestAnswer.Again.values()),
                answer("amount-" + id, SAY.amountField(of), HarvestAnswer.Amount.values()),
                Double.isNaN(kilograms) ? null : kilograms,
                answer("taste-" + id, SAY.tasteField(of), HarvestAnswer.Taste.values()),
                first,
                last,
                reader.optionalText("trouble-" + id, SAY.troubleField(of), LONGEST_TROUBLE));
    }

    private @Nullable LocalDate day(String field, String label, LocalDate plantedOut) {
        if (reader.text(field).isEmpty()) {
            return null;
        }
        LocalDate day = reader.date(field, label);
        if (day.isAfter(today) || day.isBefore(plantedOut)) {
            reader.refuse(field, SAY.dayUnfit(label, day, plantedOut, today));
        }
        return day;
    }

    private <T extends HarvestAnswer> @Nullable T answer(String field, String label, T[] answers) {
        if (reader.text(field).isEmpty()) {
            return null;
        }
        String word = reader.choice(
                field, label, Arrays.stream(answers).map(HarvestAnswer::word).toList());
        return HarvestAnswer.named(answers, word).orElse(null);
    }

    /** What was said before, as the form shows it. */
    static FormReader filled(Map<UUID, HarvestNote> notes) {
        Map<String, List<String>> typed = new HashMap<>();
        notes.forEach((id, note) -> {
            put(typed, "again-" + id, note.again() == null ? null : note.again().word());
            put(
                    typed,
                    "amount-" + id,
                    note.amount() == null ? null : note.amount().word());
            put(typed, "kilograms-" + id, note.kilograms());
            put(typed, "taste-" + id, note.taste() == null ? null : note.taste().word());
            put(typed, "first-" + id, note.firstOn());
            put(typed, "last-" + id, note.lastOn());
            put(typed, "trouble-" + id, note.trouble());
        });
        return new FormReader(typed);
    }

    private static void put(Map<String, List<String>> typed, String field, @Nullable Object value) {
        if (value != null) {
            typed.put(field, List.of(value.toString()));
        }
    }
}
