package warmshelf.label;

import static warmshelf.db.generated.Tables.LABEL_STOCK;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.label.paper.LabelMedium;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.StockTable;

/** Keeps the group's own sizes of labels, beside the usual ones of the reference table. */
final class LabelStockStore {
    private final DSLContext sql;
    private final Audit audit;

    LabelStockStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** A usual size or one of the group's own, on the list or taken off it, by its key. */
    Optional<LabelStock> find(String key) {
        return StockTable.find(key).or(() -> own(key));
    }

    private Optional<LabelStock> own(String key) {
        try {
            return read(LABEL_STOCK.ID.eq(UUID.fromString(key))).stream().findFirst();
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    /** The group's own sizes, the newest first. */
    List<LabelStock> own() {
        return read(LABEL_STOCK.REMOVED_AT.isNull());
    }

    private List<LabelStock> read(Condition which) {
        return sql.selectFrom(LABEL_STOCK)
                .where(which)
                .orderBy(LABEL_STOCK.MADE_AT.desc(), LABEL_STOCK.ID)
                .fetch(LabelStockStore::stock);
    }

    private static LabelStock stock(Record row) {
        return new LabelStock(
                row.get(LABEL_STOCK.ID).toString(),
                LabelMedium.withWord(row.get(LABEL_STOCK.MEDIUM)).orElseThrow(),
                row.get(LABEL_STOCK.NAME),
                row.get(LABEL_STOCK.PAGE_WIDTH_MM).doubleValue(),
                row.get(LABEL_STOCK.PAGE_HEIGHT_MM).doubleValue(),
                row.get(LABEL_STOCK.WIDTH_MM).doubleValue(),
                row.get(LABEL_STOCK.HEIGHT_MM).doubleValue(),
                row.get(LABEL_STOCK.LABEL_COLUMNS),
                row.get(LABEL_STOCK.LABEL_ROWS),
                row.get(LABEL_STOCK.LEFT_MM).doubleValue(),
                row.get(LABEL_STOCK.TOP_MM).doubleValue(),
                row.get(LABEL_STOCK.GAP_ACROSS_MM).doubleValue(),
                row.get(LABEL_STOCK.GAP_DOWN_MM).doubleValue(),
                row.get(LABEL_STOCK.POINT_MM).doubleValue());
    }

    /** Adds a size; its key is the stock's. */
    void add(LabelStock stock, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            UUID id = UUID.fromString(stock.key());
            tx.insertInto(LABEL_STOCK)
                    .set(LABEL_STOCK.ID, id)
                    .set(LABEL_STOCK.MEDIUM, stock.medium().word())
                    .set(LABEL_STOCK.NAME, stock.name())
                    .set(LABEL_STOCK.PAGE_WIDTH_MM, BigDecimal.valueOf(stock.pageWidth()))
                    .set(LABEL_STOCK.PAGE_HEIGHT_MM, BigDecimal.valueOf(stock.pageHeight()))
                    .set(LABEL_STOCK.WIDTH_MM, BigDecimal.valueOf(stock.width()))
                    .set(LABEL_STOCK.HEIGHT_MM, BigDecimal.valueOf(stock.height()))
                    .set(LABEL_STOCK.LABEL_COLUMNS, stock.columns())
                    .set(LABEL_STOCK.LABEL_ROWS, stock.rows())
                    .set(LABEL_STOCK.LEFT_MM, BigDecimal.valueOf(stock.left()))
                    .set(LABEL_STOCK.TOP_MM, BigDecimal.valueOf(stock.top()))
                    .set(LABEL_STOCK.GAP_ACROSS_MM, BigDecimal.valueOf(stock.gapAcross()))
                    .set(LABEL_STOCK.GAP_DOWN_MM, BigDecimal.valueOf(stock.gapDown()))
                    .set(LABEL_STOCK.POINT_MM, BigDecimal.valueOf(stock.point()))
                    .set(LABEL_STOCK.MADE_BY, by)
                    .set(LABEL_STOCK.MADE_AT, audit.now())
                    .execute();
            audit.write(tx, by, "add label size", "label stock", id, stock.name());
        });
    }

    /** Takes a size off the list; labels printed on it stay what they are. False where it is not there. */
    boolean remove(UUID id, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int changed = tx.update(LABEL_STOCK)
                    .set(LABEL_STOCK.REMOVED_BY, by)
                    .set(LABEL_STOCK.REMOVED_AT, audit.now())
                    .where(LABEL_STOCK.ID.eq(id), LABEL_STOCK.REMOVED_AT.isNull())
                    .execute();
            if (changed == 1) {
                audit.write(tx, by, "remove label size", "label stock", id, "");
            }
            return changed == 1
                    || tx.fetchExists(DSL.selectOne().from(LABEL_STOCK).where(LABEL_STOCK.ID.eq(id)));
        });
    }
}
