package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import org.jspecify.annotations.Nullable;
import warmshelf.words.Counted;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a season is not closed or opened, or that is not taken back. */
sealed interface SeasonRefusal extends Message {

    /** Somebody closed it before. */
    record ClosedAlready(int season) implements SeasonRefusal {
        @Override
        public String words(Units units) {
            return SAY.closedAlready(season);
        }
    }

    /** What is not over is no longer what was looked through. */
    record ChangedMeanwhile(int season) implements SeasonRefusal {
        @Override
        public String words(Units units) {
            return SAY.changedMeanwhile(season);
        }
    }

    /** The season under way was not closed. */
    record NotClosed(int season) implements SeasonRefusal {
        @Override
        public String words(Units units) {
            return SAY.notClosed(season);
        }
    }

    /** The group works towards another season by now. */
    record OpenedAlready(int season) implements SeasonRefusal {
        @Override
        public String words(Units units) {
            return SAY.openedAlready(season);
        }
    }

    /** Something was asked for in it. */
    record InUse(int season, int sowings) implements SeasonRefusal {
        @Override
        public String words(Units units) {
            return SAY.inUse(season, Counted.of(sowings, "sowing was", "sowings were"));
        }
    }

    /**
     * What was said of a sowing cannot be.
     *
     * @param why null: it is gone
     */
    record NotSettled(String title, @Nullable Message why) implements SeasonRefusal {
        @Override
        public String words(Units units) {
            return SAY.couldNotSettle(title, why == null ? SAY.isGone() : why.words(units));
        }
    }

    /** Nothing is closed that could be opened again. */
    record NothingToTakeBack(int season) implements SeasonRefusal {
        @Override
        public String words(Units units) {
            return SAY.nothingToTakeBack(season);
        }
    }
}
