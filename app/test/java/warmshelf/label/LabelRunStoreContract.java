package warmshelf.label;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.label.paper.LabelMedium;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.PrinterScale;
import warmshelf.label.paper.StockTable;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class LabelRunStoreContract extends StoreContract {
    private static final LabelRunStore.Manner ON_A_SHEET = new LabelRunStore.Manner("a4-21", null, 20, true);

    private GrowRoom room;
    private LabelRunStore runs;
    private UUID peppers;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        runs = new LabelRunStore(database(), audit());
        peppers = room.tomsPeppers();
    }

    private UUID print(LabelRunStore.Manner manner, LabelPurpose purpose, int copies) {
        return runs.keep(
                manner, List.of(new LabelRun.Line(CodeStore.Kind.SOWING, peppers, purpose, copies)), room.tom());
    }

    @Test
    void what_was_printed_counts_as_labelled_until_somebody_says_that_it_did_not_come_out() {
        assertThat(runs.labelled()).isEmpty();

        UUID run = print(ON_A_SHEET, LabelPurpose.TRAY, 1);
        assertThat(runs.labelled().get(peppers)).containsExactly(LabelPurpose.TRAY);

        assertThat(runs.undo(run, room.tom(), false)).isInstanceOf(Decision.Done.class);
        assertThat(runs.undo(run, room.tom(), false)).isInstanceOf(Decision.Done.class);
        assertThat(runs.labelled()).isEmpty();
        assertThat(runs.find(run).orElseThrow().undone()).isTrue();
        assertThat(database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("undo labels")))
                .isEqualTo(1);
    }

    @Test
    void another_member_cannot_take_it_back_and_a_coordinator_can() {
        UUID run = print(ON_A_SHEET, LabelPurpose.TRAY, 1);

        assertThat(runs.undo(run, room.priya(), false)).isInstanceOf(Decision.Refused.class);
        assertThat(runs.labelled()).isNotEmpty();
        assertThat(runs.undo(run, room.priya(), true)).isInstanceOf(Decision.Done.class);
        assertThat(runs.undo(UUID.randomUUID(), room.tom(), false)).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void the_next_print_goes_on_where_the_last_sheet_was_left() {
        LabelStock sheet = StockTable.find("a4-21").orElseThrow();
        assertThat(runs.lastOf(room.tom())).isEmpty();

        UUID run = print(ON_A_SHEET, LabelPurpose.POT, 5);
        LabelRun last = runs.lastOf(room.tom()).orElseThrow();
        assertThat(LabelWish.after(last, sheet, java.util.Optional.empty()).startAt())
                .isEqualTo(4);
        assertThat(last.labels()).isEqualTo(5);

        runs.undo(run, room.tom(), false);
        assertThat(LabelWish.after(runs.lastOf(room.tom()).orElseThrow(), sheet, java.util.Optional.empty())
                        .startAt())
                .isEqualTo(20);
        clock.set(clock.instant().plusSeconds(60));
        print(LabelRunStore.Manner.BY_HAND, LabelPurpose.TRAY, 0);
        assertThat(runs.lastOf(room.tom()).orElseThrow().id()).isEqualTo(run);
        assertThat(runs.last().orElseThrow().id()).isEqualTo(run);
    }

    @Test
    void a_size_of_ones_own_is_kept_as_it_was_measured_and_stays_readable_when_it_is_off_the_list() {
        LabelStockStore stocks = new LabelStockStore(database(), audit());
        LabelStock roll =
                LabelStock.single(UUID.randomUUID().toString(), LabelMedium.ROLL, "cupboard roll", 62.25, 29, 0);

        stocks.add(roll, room.tom());
        assertThat(stocks.own()).containsExactly(roll);
        assertThat(stocks.find(roll.key())).contains(roll);

        assertThat(stocks.remove(UUID.fromString(roll.key()), room.tom())).isTrue();
        assertThat(stocks.remove(UUID.fromString(roll.key()), room.tom())).isTrue();
        assertThat(stocks.own()).isEmpty();
        assertThat(stocks.find(roll.key())).contains(roll);
        assertThat(stocks.remove(UUID.randomUUID(), room.tom())).isFalse();
        assertThat(stocks.find("a4-21")).isPresent();
        assertThat(stocks.find("none")).isEmpty();
    }

    @Test
    void a_printer_measured_again_under_its_name_is_one_printer() {
        LabelPrinterStore printers = new LabelPrinterStore(database(), audit());

        printers.measure("Upstairs", new PrinterScale(0.98, 0.97, 1.5, -0.5), room.tom());
        printers.measure("upstairs", new PrinterScale(0.99, 1, 0, 0), room.priya());

        assertThat(printers.all()).singleElement().satisfies(printer -> {
            assertThat(printer.name()).isEqualTo("upstairs");
            assertThat(printer.scale()).isEqualTo(new PrinterScale(0.99, 1, 0, 0));
        });
        UUID id = printers.all().get(0).id();
        assertThat(printers.remove(id, room.tom())).isTrue();
        assertThat(printers.all()).isEmpty();
        assertThat(printers.find(id)).isPresent();
    }
}
