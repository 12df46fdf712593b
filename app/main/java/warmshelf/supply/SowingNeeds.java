package warmshelf.supply;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.crop.SeedTrait;
import warmshelf.crop.UsualSowing;

/**
 * What one sowing still needs, from where it stands.
 *
 * @param cells that its seeds want; for a bag those its sprouts will want
 * @param cellsInTray how many a whole tray of that kind has; null: nobody has said
 * @param soaks whether a soak is still to come
 * @param toBeSown whether it is not yet in compost or paper
 * @param toBeFilled whether cells are still to be filled for it
 * @param toBePotted whether its plants are still to be potted on
 */
record SowingNeeds(
        Crop crop,
        Method method,
        int plants,
        int cells,
        @Nullable Integer cellsInTray,
        boolean treated,
        boolean soaks,
        boolean toBeSown,
        boolean toBeFilled,
        boolean toBePotted) {
    /** What settles when it is watered, and what is spilled: common practice. */
    static final double AND_A_TENTH = 1.1;
    /** A square pot of 9 cm: from memory. */
    static final double POT_ML = 400;
    /** A pot of 8 cm that is planted with its seedling, whose big seed lies in its compost: from memory. */
    static final double ROTTING_POT_ML = 150;
    /** Peppers in cells, and so the usual depth: a quarter of an inch (common practice). */
    static final double USUAL_DEPTH_MM = 6;
    /** For seed that needs light: our assumption. */
    static final double DUSTING_MM = 2;
    /** A tenth of a small cup of 50 ml, as the how-to mixes it: our assumption. */
    static final double SOAK_ML = 5;
    /** What the form for asking offers first. */
    static final int USUAL_TRAY = 72;

    Supplies supplies() {
        Map<SupplyItem, Double> needs = new EnumMap<>(SupplyItem.class);
        if (soaks && !treated) {
            needs.put(SupplyItem.PEROXIDE, SOAK_ML);
        }
        if (toBeSown && method == Method.BAG) {
            needs.put(SupplyItem.BAGS, 1.0);
        }
        if (toBeFilled && UsualSowing.of(crop).isPresent()) {
            needs.put(SupplyItem.SOWING_COMPOST, cells * ROTTING_POT_ML * AND_A_TENTH);
            needs.put(SupplyItem.ROTTING_POTS, (double) cells);
        } else if (toBeFilled) {
            CellTray tray = tray();
            needs.put(SupplyItem.SOWING_COMPOST, cells * tray.cellMl() * AND_A_TENTH);
            needs.put(SupplyItem.COVERING, cells * tray.cellArea() * coveringMm() / 1000);
            needs.put(SupplyItem.CELL_TRAYS, halfTrays(tray) / 2.0);
        }
        if (toBePotted) {
            needs.put(SupplyItem.POTS, (double) plants);
            needs.put(SupplyItem.POTTING_COMPOST, plants * POT_ML * AND_A_TENTH);
        }
        int labels =
                (toBeSown && method == Method.BAG ? 1 : 0) + (toBeFilled ? trays() : 0) + (toBePotted ? plants : 0);
        if (labels > 0) {
            needs.put(SupplyItem.LABELS, (double) labels);
        }
        return new Supplies(needs);
    }

    private CellTray tray() {
        return CellTray.of(cellsInTray == null ? USUAL_TRAY : cellsInTray);
    }

    private int halfTrays(CellTray tray) {
        return (2 * cells + tray.cells() - 1) / tray.cells();
    }

    private int trays() {
        return (halfTrays(tray()) + 1) / 2;
    }

    private double coveringMm() {
        if (crop.treatment().has(SeedTrait.Kind.FINE_AS_DUST)) {
            return 0;
        }
        if (crop.light().isNeeded()) {
            return DUSTING_MM;
        }
        // Seed that is sown deeper lies in its compost, which is counted with the cells.
        return crop.depthMm() == null ? USUAL_DEPTH_MM : Math.min(crop.depthMm(), USUAL_DEPTH_MM);
    }
}
