package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Optional;
import warmshelf.crop.SecondCrop;

/**
 * Sowing a crop again and again, so that its harvest goes on.
 *
 * @param daysMin the fewest days from one sowing to the next
 * @param daysMax the most
 * @param until the last day on which another still surely comes to something, as far as that is known
 */
public record SowAgain(int daysMin, int daysMax, LocalDate until) {

    /** Empty where no source says how often, or no time is left for another. */
    static Optional<SowAgain> after(LocalDate sown, LocalDate today, SowingDays days) {
        return SecondCrop.again(days.crop())
                .flatMap(span -> days.lastSure(DateWindow.later(sown.plusDays(span.least()), today))
                        .map(last -> new SowAgain(span.least(), span.most(), last)));
    }
}
