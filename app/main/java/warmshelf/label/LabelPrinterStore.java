package warmshelf.label;

import static warmshelf.db.generated.Tables.LABEL_PRINTER;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.label.paper.PrinterScale;

/** Keeps how true the group's printers are. */
final class LabelPrinterStore {
    private static final int DECIMALS = 6;

    private final DSLContext sql;
    private final Audit audit;

    LabelPrinterStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A printer by the name that the group gives it. */
    record MeasuredPrinter(UUID id, String name, PrinterScale scale) {}

    List<MeasuredPrinter> all() {
        return read(LABEL_PRINTER.REMOVED_AT.isNull());
    }

    /** A printer, on the list or taken off it. */
    Optional<MeasuredPrinter> find(UUID id) {
        return read(LABEL_PRINTER.ID.eq(id)).stream().findFirst();
    }

    private List<MeasuredPrinter> read(Condition which) {
        return sql.selectFrom(LABEL_PRINTER)
                .where(which)
                .orderBy(LABEL_PRINTER.NAME, LABEL_PRINTER.ID)
                .fetch(row -> new MeasuredPrinter(
                        row.getId(),
                        row.getName(),
                        new PrinterScale(
                                row.getScaleAcross().doubleValue(),
                                row.getScaleDown().doubleValue(),
                                row.getShiftAcrossMm().doubleValue(),
                                row.getShiftDownMm().doubleValue())));
    }

    /** Keeps what was measured of a printer; one of that name, whatever its capitals, is measured anew. */
    void measure(String name, PrinterScale scale, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            UUID id = tx
                    .select(LABEL_PRINTER.ID)
                    .from(LABEL_PRINTER)
                    .where(
                            DSL.lower(LABEL_PRINTER.NAME).eq(DSL.lower(DSL.val(name))),
                            LABEL_PRINTER.REMOVED_AT.isNull())
                    .forUpdate()
                    .fetch(LABEL_PRINTER.ID)
                    .stream()
                    .findFirst()
                    .orElseGet(UUID::randomUUID);
            var row = tx.newRecord(LABEL_PRINTER);
            row.setId(id);
            row.setName(name);
            row.setScaleAcross(decimal(scale.scaleAcross()));
            row.setScaleDown(decimal(scale.scaleDown()));
            row.setShiftAcrossMm(decimal(scale.shiftAcross()));
            row.setShiftDownMm(decimal(scale.shiftDown()));
            row.setMeasuredBy(by);
            row.setMeasuredAt(audit.now());
            row.merge();
            audit.write(tx, by, "measure printer", "label printer", id, name);
        });
    }

    private static BigDecimal decimal(double number) {
        return BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP);
    }

    /** Takes a printer off the list. False where it is not there. */
    boolean remove(UUID id, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int changed = tx.update(LABEL_PRINTER)
                    .set(LABEL_PRINTER.REMOVED_BY, by)
                    .set(LABEL_PRINTER.REMOVED_AT, audit.now())
                    .where(LABEL_PRINTER.ID.eq(id), LABEL_PRINTER.REMOVED_AT.isNull())
                    .execute();
            if (changed == 1) {
                audit.write(tx, by, "remove printer", "label printer", id, "");
            }
            return changed == 1 || tx.fetchExists(LABEL_PRINTER, LABEL_PRINTER.ID.eq(id));
        });
    }
}
