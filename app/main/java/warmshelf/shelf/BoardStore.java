package warmshelf.shelf;

import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** Reads what lies where over a range of days. */
public final class BoardStore {
    private final DSLContext sql;
    private final UnaryOperator<String> cropName;
    private final BiFunction<Integer, String, String> trialWords;

    /**
     * Reads with the names that the catalogue gives to crops.
     *
     * @param cropName from a crop's id to its name
     * @param trialWords from a trial's number and the letter of a way to what that is called
     */
    public BoardStore(DSLContext sql, UnaryOperator<String> cropName, BiFunction<Integer, String, String> trialWords) {
        this.sql = sql;
        this.cropName = cropName;
        this.trialWords = trialWords;
    }

    /** Everything that lies somewhere on a day from {@code from} up to but not on {@code to}. */
    public Board read(LocalDate from, LocalDate to) {
        return new Board(stays(from, to), setPoints(from, to), OutageStore.unusable(sql, from, to));
    }

    private List<StayOnBoard> stays(LocalDate from, LocalDate to) {
        return sql.select(
                        STAY.ID,
                        STAY.SOWING_ID,
                        STAY.PLACE_ID,
                        STAY.FIRST_QUARTER,
                        STAY.QUARTERS,
                        STAY.FROM_DAY,
                        STAY.TO_DAY,
                        SOWING.CROP_ID,
                        MEMBER.CALLED,
                        SOWING.STAGE,
                        SOWING.CONTAINER,
                        TRIAL.NUMBER,
                        TRIAL_SOWING.LETTER)
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .leftJoin(TRIAL_SOWING)
                .on(TRIAL_SOWING.SOWING_ID.eq(STAY.SOWING_ID))
                .leftJoin(TRIAL)
                .on(TRIAL.ID.eq(TRIAL_SOWING.TRIAL_ID))
                // a stay that ended on its first day holds nothing
                .where(STAY.FROM_DAY.lt(to), STAY.TO_DAY.gt(from), STAY.FROM_DAY.lt(STAY.TO_DAY))
                .orderBy(STAY.FROM_DAY, STAY.FIRST_QUARTER, STAY.ID)
                .fetch(row -> new StayOnBoard(
                        row.get(STAY.ID),
                        row.get(STAY.SOWING_ID),
                        row.get(STAY.PLACE_ID),
                        row.get(STAY.FIRST_QUARTER),
                        row.get(STAY.QUARTERS),
                        row.get(STAY.FROM_DAY),
                        row.get(STAY.TO_DAY),
                        cropName.apply(row.get(SOWING.CROP_ID)),
                        row.get(MEMBER.CALLED),
                        row.get(SOWING.STAGE).replace('-', ' '),
                        row.get(SOWING.CONTAINER),
                        trial(row.get(TRIAL.NUMBER), row.get(TRIAL_SOWING.LETTER))));
    }

    private @Nullable TrialOnBoard trial(@Nullable Integer number, String way) {
        return number == null ? null : new TrialOnBoard(number, way, trialWords.apply(number, way));
    }

    private SetPoints setPoints(LocalDate from, LocalDate to) {
        Map<UUID, Map<LocalDate, Double>> byMat =
                sql.selectFrom(MAT_DAY).where(MAT_DAY.ON_DAY.ge(from), MAT_DAY.ON_DAY.lt(to)).fetch().stream()
                        .collect(Collectors.groupingBy(
                                row -> row.getMatId(),
                                Collectors.toMap(row -> row.getOnDay(), row -> row.getCelsius())));
        return new SetPoints(byMat);
    }
}
