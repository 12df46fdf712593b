package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.RecordNotes;
import warmshelf.frost.minima.SeasonFrost;
import warmshelf.words.DayWords;

/** Tells in sentences what a thermometer's nights say of frost so far. */
final class NightsSummary {
    private static final int FEWEST_SEASONS_FOR_DATES = 3;
    private static final int MOST_SEASONS_NAMED = 10;

    private NightsSummary() {}

    static List<String> of(ThermometerRecord record, LocalDate today) {
        int nights = record.minima().size();
        if (nights == 0) {
            return List.of(SAY.noNightYet());
        }
        String noted = SAY.countNights(nights);
        Optional<FrostRecord> frost = record.frost(Threshold.FROST);
        if (frost.isEmpty()) {
            return List.of(SAY.nightsOnly(noted));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(SAY.nightsNoted(noted));
        addSeasons(sentences, frost.get().spring());
        addSeasons(sentences, frost.get().autumn());
        addDates(sentences, frost.get().spring(), today.getYear());
        addDates(sentences, frost.get().autumn(), today.getYear());
        RecordNotes.of(record.station(), frost.get(), true).forEach(note -> sentences.add(note.words()));
        return sentences;
    }

    private static void addSeasons(List<String> sentences, FrostSide side) {
        List<SeasonFrost> seasons = side.seasons();
        seasons.stream()
                .skip(Math.max(0, seasons.size() - MOST_SEASONS_NAMED))
                .forEach(each -> sentences.add(season(side.spring(), each.year(), each.day())));
    }

    private static String season(boolean spring, int year, @Nullable LocalDate frost) {
        if (frost == null) {
            return spring ? SAY.springWithout(year) : SAY.autumnWithout(year);
        }
        String day = DayWords.day(frost);
        return spring ? SAY.springLast(year, day) : SAY.autumnFirst(year, day);
    }

    private static void addDates(List<String> sentences, FrostSide side, int year) {
        OptionalDouble half = side.dayAt(0.5);
        OptionalDouble oneInTen = side.dayAt(0.1);
        if (side.withFrost() >= FEWEST_SEASONS_FOR_DATES && half.isPresent() && oneInTen.isPresent()) {
            sentences.add(
                    side.spring()
                            ? SAY.springShares(date(half, year), date(oneInTen, year))
                            : SAY.autumnShares(date(half, year), date(oneInTen, year)));
        }
    }

    private static String date(OptionalDouble day, int year) {
        return DayWords.date(YearDay.in(year, day.getAsDouble()));
    }
}
