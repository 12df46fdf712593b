package warmshelf.frost.garden;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.RecordNotes;
import warmshelf.frost.minima.SeasonFrost;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/** Tells in sentences what a thermometer's nights say of frost so far. */
final class NightsSummary {
    private static final int FEWEST_SEASONS_FOR_DATES = 3;
    private static final int MOST_SEASONS_NAMED = 10;

    private NightsSummary() {}

    static List<String> of(ThermometerRecord record, LocalDate today) {
        int nights = record.minima().size();
        if (nights == 0) {
            return List.of("No night is noted yet; a last frost date needs a whole spring.");
        }
        String noted = Counted.of(nights, "night noted", "nights noted");
        Optional<FrostRecord> frost = record.frost(Threshold.FROST);
        if (frost.isEmpty()) {
            return List.of(noted + "; a last frost date needs a whole spring, read until the frosts are long over.");
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(noted + ".");
        addSeasons(sentences, frost.get().spring(), "Spring", "last");
        addSeasons(sentences, frost.get().autumn(), "Autumn", "first");
        addDates(sentences, frost.get().spring(), "springs", "after", today.getYear());
        addDates(sentences, frost.get().autumn(), "autumns", "before", today.getYear());
        RecordNotes.of(record.station(), frost.get(), true).forEach(note -> sentences.add(note.words()));
        return sentences;
    }

    private static void addSeasons(List<String> sentences, FrostSide side, String season, String which) {
        List<SeasonFrost> seasons = side.seasons();
        seasons.stream().skip(Math.max(0, seasons.size() - MOST_SEASONS_NAMED)).forEach(each -> {
            LocalDate day = each.day();
            sentences.add(
                    day == null
                            ? "%s %d: no frost.".formatted(season, each.year())
                            : "%s %d: the %s frost was on %s."
                                    .formatted(season, each.year(), which, DayWords.day(day)));
        });
    }

    private static void addDates(List<String> sentences, FrostSide side, String seasons, String when, int year) {
        OptionalDouble half = side.dayAt(0.5);
        OptionalDouble oneInTen = side.dayAt(0.1);
        if (side.withFrost() >= FEWEST_SEASONS_FOR_DATES && half.isPresent() && oneInTen.isPresent()) {
            sentences.add("Half of the %s have a frost %s %s, one in ten %s %s."
                    .formatted(seasons, when, date(half, year), when, date(oneInTen, year)));
        }
    }

    private static String date(OptionalDouble day, int year) {
        return DayWords.date(YearDay.in(year, day.getAsDouble()));
    }
}
