package warmshelf.frost.garden;

import static warmshelf.db.generated.Tables.FROST_CORRECTION;

import java.time.MonthDay;
import org.jooq.Condition;
import org.jspecify.annotations.Nullable;
import warmshelf.db.generated.tables.records.FrostCorrectionRecord;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.frost.garden.FrostCorrection.Change;

/** How a correction lies in the columns of its table. */
final class CorrectionColumnsStore {
    private static final String SHIFT = "shift";
    private static final String DATES = "dates";
    /** What {@link MonthDay} writes before a month and day. */
    private static final String NO_YEAR = "--";

    private CorrectionColumnsStore() {}

    static Condition of(Area area) {
        if (area instanceof Area.Garden garden) {
            return FROST_CORRECTION.MEMBER_ID.eq(garden.memberId());
        }
        Area.Postcodes postcodes = (Area.Postcodes) area;
        return FROST_CORRECTION
                .COUNTRY
                .eq(postcodes.country())
                .and(FROST_CORRECTION.POSTCODE_START.eq(postcodes.start()));
    }

    static void put(FrostCorrectionRecord row, Area area, Change change) {
        if (area instanceof Area.Garden garden) {
            row.setMemberId(garden.memberId());
        } else if (area instanceof Area.Postcodes postcodes) {
            row.setCountry(postcodes.country());
            row.setPostcodeStart(postcodes.start());
        }
        if (change instanceof Change.Shift shift) {
            row.setHow(SHIFT);
            row.setSpringShiftDays(shift.springDays());
            row.setAutumnShiftDays(shift.autumnDays());
        } else if (change instanceof Change.Dates dates) {
            row.setHow(DATES);
            row.setSpringAverage(text(dates.springAverage()));
            row.setSpringOneInTen(text(dates.springOneInTen()));
            row.setAutumnAverage(text(dates.autumnAverage()));
            row.setAutumnOneInTen(text(dates.autumnOneInTen()));
        }
    }

    static Area area(FrostCorrectionRecord row) {
        return row.getMemberId() == null
                ? new Area.Postcodes(row.getCountry(), row.getPostcodeStart())
                : new Area.Garden(row.getMemberId());
    }

    static Change change(FrostCorrectionRecord row) {
        return row.getHow().equals(SHIFT)
                ? new Change.Shift(row.getSpringShiftDays(), row.getAutumnShiftDays())
                : new Change.Dates(
                        day(row.getSpringAverage()),
                        day(row.getSpringOneInTen()),
                        day(row.getAutumnAverage()),
                        day(row.getAutumnOneInTen()));
    }

    private static @Nullable String text(@Nullable MonthDay day) {
        return day == null ? null : day.toString().substring(NO_YEAR.length());
    }

    private static @Nullable MonthDay day(@Nullable String text) {
        return text == null ? null : MonthDay.parse(NO_YEAR + text);
    }
}
