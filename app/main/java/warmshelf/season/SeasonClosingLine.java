package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.season.SeasonClosing.ClosedFigures;
import warmshelf.words.Counted;

/**
 * A closed season as pages tell of it.
 *
 * @param closedOn the day in the group's zone
 * @param nextSeason the one opened after it; null: none yet
 * @param words its figures as they were when it was closed, one sentence after another
 */
record SeasonClosingLine(
        int season,
        LocalDate closedOn,
        String closedBy,
        @Nullable Integer nextSeason,
        List<String> words) {
    static SeasonClosingLine of(SeasonClosing closing, ZoneId zone) {
        return new SeasonClosingLine(
                closing.season(),
                closing.closedAt().atZoneSameInstant(zone).toLocalDate(),
                closing.closedBy(),
                closing.nextSeason(),
                words(closing.figures()));
    }

    private static List<String> words(ClosedFigures figures) {
        if (figures.sown() == 0) {
            return List.of(SAY.nothingSown());
        }
        List<String> words = new ArrayList<>();
        words.add(SAY.sown(
                Counted.of(figures.sown(), "sowing", "sowings"),
                Counted.of(figures.members(), "member", "members"),
                Counted.of(figures.seeds(), "seed", "seeds")));
        if (figures.counted() > 0) {
            words.add(
                    SAY.came(figures.came(), figures.counted(), Math.round(100f * figures.came() / figures.counted())));
        }
        if (figures.plantsOut() > 0) {
            words.add(SAY.plants(Counted.of(figures.plantsOut(), "plant", "plants")));
        }
        if (figures.plantsGiven() > 0) {
            words.add(SAY.plantsGiven(Counted.of(figures.plantsGiven(), "seedling was", "seedlings were")));
        }
        if (figures.givenUp() > 0) {
            words.add(SAY.givenUp(Counted.of(figures.givenUp(), "sowing was", "sowings were")));
        }
        if (figures.notRecorded() > 0) {
            words.add(SAY.notRecordedCount(Counted.of(figures.notRecorded(), "sowing", "sowings")));
        }
        if (figures.goingOn() > 0) {
            words.add(SAY.going(Counted.of(figures.goingOn(), "sowing goes", "sowings go")));
        }
        return words;
    }
}
