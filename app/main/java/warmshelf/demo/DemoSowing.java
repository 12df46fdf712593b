package warmshelf.demo;

import org.apache.commons.csv.CSVRecord;
import warmshelf.crop.Method;
import warmshelf.sowing.Container;
import warmshelf.sowing.SowingStage;

/**
 * One sowing of the demo, as its table tells it.
 *
 * @param number row of the table, which also starts its chance
 * @param start day of sowing, counted from today
 * @param askedBefore days before the sowing, or before today where the sowing is still to come, on which it was asked for
 * @param target what has become of it by today
 * @param trouble what goes wrong with it; empty: nothing
 */
record DemoSowing(
        int number,
        String member,
        String variety,
        int plants,
        Method method,
        boolean warm,
        Container container,
        int start,
        int askedBefore,
        String target,
        String trouble,
        String note) {

    static DemoSowing of(CSVRecord row) {
        return new DemoSowing(
                (int) row.getRecordNumber(),
                row.get("member"),
                row.get("variety"),
                DemoTable.number(row, "plants"),
                Method.named(row.get("method")),
                row.get("heat").equals("warm"),
                Container.named(row.get("container")),
                DemoTable.number(row, "start"),
                DemoTable.number(row, "asked_days_before"),
                row.get("target"),
                row.get("trouble"),
                row.get("note"));
    }

    /** The furthest that its people may bring it by today. */
    SowingStage furthest() {
        return switch (target) {
            case "waiting", "placed", "refused", "withdrawn", "home" -> SowingStage.PLANNED;
            default -> SowingStage.named(target);
        };
    }

    boolean has(String which) {
        return trouble.equals(which);
    }

    /** The day it was asked for, counted from today. */
    int asked() {
        return Math.min(start, 0) - askedBefore;
    }
}
