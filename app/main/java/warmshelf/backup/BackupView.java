package warmshelf.backup;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * How backups stand, for pages.
 *
 * @param kind 'fresh', 'none-yet', 'old', 'failed' or 'off', and 'elsewhere' where the data lie in a database server
 * @param amiss a coordinator has to see to it
 * @param madeOn the day of the newest, in the group's zone; null: there is none
 * @param madeAt its time of day; null: there is none
 * @param ago how long that is ago, in words; empty: there is none
 * @param megabytes its size in words; empty: there is none
 * @param kept how many there are
 * @param folder where they lie; empty: nowhere
 * @param why the last try failed; empty: it did not
 */
public record BackupView(
        String kind,
        boolean amiss,
        @Nullable LocalDate madeOn,
        @Nullable LocalTime madeAt,
        String ago,
        String megabytes,
        int kept,
        String folder,
        String why) {

    static final BackupView ELSEWHERE = new BackupView("elsewhere", false, null, null, "", "", 0, "", "");
    static final BackupView NOWHERE = new BackupView("off", false, null, null, "", "", 0, "", "");

    public BackupView {
        madeAt = madeAt == null ? null : madeAt.truncatedTo(ChronoUnit.MINUTES);
    }
}
