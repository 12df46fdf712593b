package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.Prospect;
import warmshelf.crop.ProspectWords;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** What else a grower should know of a timeline. Temperatures are in degrees Celsius. */
public sealed interface TimelineNote extends Message {

    // whether there is time to sow

    /** The autumn’s frosts begin before the spring’s have ended. */
    record NeverFrostFree() implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.neverFrostFree();
        }
    }

    /** The same of what is sown already. */
    record StayUnderCover() implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.stayUnderCover();
        }
    }

    /** Even the quickest kinds need more days than there are; {@code left} of them, where that is known. */
    record TooShort(Optional<DaysToMaturity> quickest, Optional<Long> left, LocalDate plantingOut)
            implements TimelineNote {
        @Override
        public String words(Units units) {
            String days = quickest.map(DaysToMaturity::words).orElse("");
            return left.map(each -> SAY.tooShortWithDaysLeft(days, each, day(plantingOut)))
                    .orElseGet(() -> SAY.tooShort(days));
        }
    }

    /** The usual days of sowing have passed, and there is time until the last. */
    record UsualSowingEnded(LocalDate ended, LocalDate last) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.usualSowingEnded(day(ended), day(last));
        }
    }

    /** Planted later than from that last sowing it would not root before winter. */
    record WouldNotRoot(LocalDate lastSowing) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.wouldNotRoot(SAY.lastSowingWas(day(lastSowing)));
        }
    }

    /** It is too late to sow, and not to buy plants. */
    record BuyPlants(LocalDate lastSowing, LocalDate out, Optional<HarvestOutlook> harvest) implements TimelineNote {
        @Override
        public String words(Units units) {
            String comes = harvest.map(HarvestOutlook::sentence).orElse("");
            return SAY.buyPlants(SAY.lastSowingWas(day(lastSowing)), day(out), comes)
                    .strip();
        }
    }

    /** It is too late for bought plants too. */
    record BoughtTooLate(LocalDate lastSowing) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.boughtTooLate(SAY.lastSowingWas(day(lastSowing)));
        }
    }

    /** What stands over winter roots before it. */
    record RootsInTime() implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.rootsInTime();
        }
    }

    /** Plants that are under way will be ready too long after the usual time. */
    record OutTooLate(LocalDate out) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.outTooLate(day(out));
        }
    }

    // what harvest comes before the frost

    /** How much of it comes in time. */
    record InTime(HarvestOutlook harvest) implements TimelineNote {
        @Override
        public String words(Units units) {
            return harvest.sentence();
        }
    }

    /** It is not expected to ripen. */
    record NotRipe(HarvestOutlook harvest) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.notRipe(harvest.sentence());
        }
    }

    /** Only the quickest kinds come to something. */
    record OnlyQuickest(QuickestKinds quickest) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.onlyQuickest(quickest.days().words(), quickest.harvest().sentence());
        }
    }

    /** The usual kinds come to nothing. */
    record UsualKindsTooLate(HarvestOutlook harvest) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.usualKinds(harvest.firstInWords());
        }
    }

    /** A quick kind is the surer choice; empty where no days of one are known. */
    record ChooseQuick(Optional<DaysToMaturity> days) implements TimelineNote {
        @Override
        public String words(Units units) {
            return days.map(each -> SAY.chooseQuickOf(each.words())).orElseGet(SAY::chooseQuick);
        }
    }

    // how it is sown

    /** No spring frost is to be feared; the days count from the sowing, or from today. */
    record NoFrost(boolean fromSowing) implements TimelineNote {
        @Override
        public String words(Units units) {
            return fromSowing ? SAY.noFrostFromSowing() : SAY.noFrostFromToday();
        }
    }

    /** Its seed is too fine for a bag. */
    record TooFineForBag(String crop) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.tooFineForBag(crop);
        }
    }

    /** Its roots bear no bag. */
    record RootsBreakInBag(String crop) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.rootsBreakInBag(crop);
        }
    }

    /** It is sown at room temperature. */
    record NeedsNoMat(String crop) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.needsNoMat(crop, units.temperature(HeatNeed.ROOM_C));
        }
    }

    /** Nobody timed its seed at that temperature. */
    record DaysNotTested(double celsius) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.daysNotTested(units.temperature(celsius));
        }
    }

    /** It does not come up at that temperature, or nobody knows when. */
    record NoDaysThere(String crop, double celsius, CelsiusRange comfortable, Prospect prospect)
            implements TimelineNote {
        @Override
        public String words(Units units) {
            return ProspectWords.instead(
                    crop,
                    units.temperature(celsius),
                    units.temperatureRange(comfortable.low(), comfortable.high()),
                    prospect);
        }
    }

    /** There is no time left for the cold that its seed wants. */
    record NoTimeForTheCold(ColdSpell cold) implements TimelineNote {
        @Override
        public String words(Units units) {
            return cold.noTime(units);
        }
    }

    /**
     * No roots are laid for slips any more, or ever in a season that short.
     *
     * @param quickest days of the quickest kinds from planting out
     * @param left days between planting out and the usual frost that ends them; empty where that is not known
     */
    record LateForSlips(What what, DaysToMaturity quickest, Optional<Long> left, LocalDate plantingOut)
            implements TimelineNote {
        /** What it is too late for, by its text. */
        enum What {
            /** Whatever the day, the season is too short. */
            ANY_DAY("too short"),
            ROOTS("too late for roots"),
            BOUGHT_SLIPS("too late for slips");

            private final String section;

            What(String section) {
                this.section = section;
            }
        }

        @Override
        public String words(Units units) {
            String days = left.filter(each -> each > 0)
                    .map(each -> Counted.days(each))
                    .orElse("");
            return Slips.late(
                    what.section, Map.of("out", day(plantingOut), "days", quickest.words(), "left", days), units);
        }
    }

    /** It is raised from slips. */
    record RaisedFromSlips(Crop crop) implements TimelineNote {
        @Override
        public String words(Units units) {
            return Slips.insteadOfSowing(crop, units).orElseThrow();
        }
    }

    /** It came up earlier, by whole days, and waits for planting out. */
    record UpSooner(long days, LocalDate plantingOut) implements TimelineNote {
        @Override
        public String words(Units units) {
            return SAY.upSooner(Counted.days(days), day(plantingOut));
        }
    }

    private static String day(LocalDate day) {
        return DayWords.dayOfMonth(day);
    }
}
