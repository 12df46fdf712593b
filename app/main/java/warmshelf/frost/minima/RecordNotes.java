package warmshelf.frost.minima;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Tells what a record of daily minima can and cannot say. */
public final class RecordNotes {
    private static final int FEW_SEASONS = 20;

    private RecordNotes() {}

    /**
     * The notes to a record.
     *
     * @param hemisphereTold whether the latitude was known, rather than guessed by the warmer months
     */
    public static List<RecordNote> of(StationMinima station, FrostRecord record, boolean hemisphereTold) {
        List<RecordNote> notes = new ArrayList<>();
        notes.add(new RecordNote.FrostIs(record.thresholdC()));
        if (!hemisphereTold) {
            notes.add(new RecordNote.HalfByWarmth(record.hemisphere()));
        }
        if (record.hemisphere() == Hemisphere.SOUTH) {
            notes.add(new RecordNote.AutumnNextYear());
        }
        few(record.spring(), notes);
        few(record.autumn(), notes);
        leftOut(record.spring(), notes);
        leftOut(record.autumn(), notes);
        if (!record.yearsWithoutReading().isEmpty()) {
            notes.add(new RecordNote.YearsWithout(record.yearsWithoutReading()));
        }
        if (station.doubted() > 0) {
            notes.add(new RecordNote.Doubted(station.doubted()));
        }
        return List.copyOf(notes);
    }

    private static void few(FrostSide side, List<RecordNote> notes) {
        int withFrost = side.withFrost();
        if (withFrost == 0) {
            int seasons = side.seasons().size();
            notes.add(
                    seasons == 0
                            ? new RecordNote.NotOneTells(side.spring())
                            : new RecordNote.NoneHadFrost(side.spring(), seasons));
        } else if (withFrost < FEW_SEASONS) {
            OptionalDouble within = side.halfWidthAt(0.1);
            notes.add(
                    within.isPresent()
                            ? new RecordNote.FewHadFrost(side.spring(), withFrost, within.getAsDouble())
                            : new RecordNote.TooFewHadFrost(side.spring(), withFrost));
        }
    }

    private static void leftOut(FrostSide side, List<RecordNote> notes) {
        if (side.leftOut() > 0) {
            notes.add(new RecordNote.LeftOut(side.spring(), side.leftOut()));
        }
    }
}
