package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Method;
import warmshelf.finding.Doubt;
import warmshelf.finding.WaysCompared;
import warmshelf.seed.Lot;
import warmshelf.seed.SeedSource;
import warmshelf.seed.Storage;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.History;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.testing.Crops;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.Units;

class TrialReadingTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 3, 1);
    private static final int SEEDS = 20;
    private static final int LAST_DAY = 14;
    private static final UUID TOM = new UUID(1, 1);
    private static final Lot LOT = new Lot(
            new UUID(2, 2),
            "pepper",
            "Lantern Row",
            2026,
            100,
            TOM,
            "Tom",
            false,
            "",
            SeedSource.PACKET,
            Storage.UNKNOWN,
            0,
            1);
    private static final List<TrialWay> TRAY_OR_BAG = List.of(
            new TrialWay("A", Method.CELLS, true, null, false), new TrialWay("B", Method.BAG, true, null, false));
    private static final List<TrialWay> THREE_WARMTHS = List.of(
            new TrialWay("A", Method.CELLS, true, 21, false),
            new TrialWay("B", Method.CELLS, true, 24, false),
            new TrialWay("C", Method.CELLS, true, 27, false));

    private final Map<UUID, History> histories = new HashMap<>();
    private final List<Trial.Block> blocks = new ArrayList<>();

    /** One sowing in the making. */
    private static final class Seen {
        private final TrialWay way;
        private final UUID id = UUID.randomUUID();
        private final List<Entry> entries = new ArrayList<>();
        private UUID lot = LOT.id();
        private @Nullable Double setPointC = 26.0;

        Seen(TrialWay way) {
            this.way = way;
        }

        Seen sown(int day) {
            return enter(day, EntryStep.SOWN, null, null, false);
        }

        Seen look(int day, int soFar) {
            return enter(day, EntryStep.LOOK, soFar, null, false);
        }

        Seen moved(int day, int seeds) {
            return enter(day, EntryStep.MOVED_TO_CELLS, null, seeds, true);
        }

        Seen ofLot(UUID other) {
            lot = other;
            return this;
        }

        Seen at(double celsius) {
            setPointC = celsius;
            return this;
        }

        private Seen enter(
                int day, EntryStep step, @Nullable Integer soFar, @Nullable Integer moved, boolean finished) {
            LocalDate on = SOWN.plusDays(day);
            entries.add(new Entry(
                    UUID.randomUUID(),
                    id,
                    step,
                    on,
                    on.atTime(18, entries.size()).atOffset(ZoneOffset.UTC),
                    soFar,
                    moved,
                    null,
                    finished,
                    null,
                    "",
                    null,
                    TOM,
                    "Tom"));
            return this;
        }

        History history() {
            Sowing sowing = new Sowing(
                    id,
                    new Sowing.Grower(TOM, "Tom", "US", "55804"),
                    2027,
                    SeasonPart.SPRING,
                    Crops.PEPPER,
                    lot,
                    "Lantern Row",
                    false,
                    12,
                    way.method(),
                    true,
                    Container.HALF_TRAY,
                    SEEDS,
                    1,
                    SEEDS,
                    0.1,
                    null,
                    Progress.of(way.method(), SEEDS, entries).stage(),
                    "",
                    1,
                    null);
            return new History(sowing, entries, List.of(), null, setPointC);
        }
    }

    private void block(Seen... ways) {
        Map<String, UUID> sowings = new HashMap<>();
        for (Seen seen : ways) {
            histories.put(seen.id, seen.history());
            sowings.put(seen.way.letter(), seen.id);
        }
        blocks.add(new Trial.Block(
                blocks.size() + 1, TOM, "Tom", SOWN, TrialDraw.of(1, List.copyOf(sowings.keySet()), SEEDS), sowings));
    }

    private TrialReading on(int day, TrialKind kind, List<TrialWay> ways) {
        Trial trial = new Trial(new UUID(9, 9), 3, kind, LOT, 2027, SEEDS, TOM, "Tom", SOWN.minusDays(3), ways, blocks);
        return TrialReading.of(trial, histories, history -> LAST_DAY, SOWN.plusDays(day), Units.METRIC);
    }

    private Seen tray() {
        return new Seen(TRAY_OR_BAG.get(0));
    }

    private Seen bag() {
        return new Seen(TRAY_OR_BAG.get(1));
    }

    @Test
    void it_is_planned_then_under_way_then_finished() {
        assertThat(on(0, TrialKind.METHOD, TRAY_OR_BAG).state()).isEqualTo(TrialState.NOBODY);
        block(tray(), bag());
        assertThat(on(0, TrialKind.METHOD, TRAY_OR_BAG).state()).isEqualTo(TrialState.PLANNED);
        blocks.clear();
        block(tray().sown(0).look(8, 5), bag().sown(0).moved(6, 10).look(8, 7));
        assertThat(on(9, TrialKind.METHOD, TRAY_OR_BAG).state()).isEqualTo(TrialState.UNDER_WAY);
        assertThat(on(2 * LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG).state()).isEqualTo(TrialState.FINISHED);
        blocks.clear();
        block(tray().sown(0).look(LAST_DAY, 15), bag().sown(0).moved(6, 20).look(9, SEEDS));
        assertThat(on(LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG).state()).isEqualTo(TrialState.FINISHED);
    }

    @Test
    void it_is_joined_once_while_nobody_knows_what_comes_of_it() {
        UUID priya = new UUID(1, 2);
        block(tray().sown(0).look(8, 5), bag().sown(0).moved(6, 10).look(8, 7));
        TrialReading underWay = on(9, TrialKind.METHOD, TRAY_OR_BAG);

        assertThat(underWay.refusalToJoin(priya, 2027)).isEmpty();
        assertThat(underWay.refusalToJoin(TOM, 2027)).containsInstanceOf(TrialRefusal.CarriedAlready.class);
        assertThat(underWay.refusalToJoin(priya, 2028)).containsInstanceOf(TrialRefusal.SeasonOver.class);
        assertThat(on(2 * LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG).refusalToJoin(priya, 2027))
                .containsInstanceOf(TrialRefusal.Over.class);
    }

    @Test
    void seedlings_are_compared_with_seedlings_never_with_roots() {
        block(
                tray().sown(0).look(7, 0).look(8, 10).look(LAST_DAY, 16),
                bag().sown(0).look(3, 12).look(5, 18).moved(5, 18).look(7, 9).look(LAST_DAY, 17));
        WaysCompared compared =
                on(LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG).comparison().orElseThrow();

        assertThat(compared.ways()).extracting(way -> way.sprouted().came()).containsExactly(16, 17);
        assertThat(compared.ways().get(1).curve().shareBy(5)).isZero();
        assertThat(compared.doubts()).contains(Doubt.ONE_TRAY_A_WAY).doesNotContain(Doubt.NOT_PLANNED);
    }

    @Test
    void a_bag_that_was_looked_at_like_the_tray_is_counted_late_and_not_looked_at_otherwise() {
        Seen tray = tray().sown(0);
        Seen bag = bag().sown(0);
        for (int day = 1; day <= LAST_DAY; day++) {
            tray.look(day, Math.max(0, 2 * day - 10));
            if (day == 5) {
                bag.enter(day, EntryStep.MOVED_TO_CELLS, null, 10, false);
            } else if (day == 9) {
                bag.moved(day, 18);
            } else {
                bag.look(day, day < 9 ? 10 : day + 3);
            }
        }
        block(tray, bag);
        assertThat(on(LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG)
                        .comparison()
                        .orElseThrow()
                        .doubts())
                .contains(Doubt.BAG_COUNTED_LATE)
                .doesNotContain(Doubt.LOOKS_DIFFER);

        blocks.clear();
        block(
                tray().sown(0).look(7, 3).look(8, 9).look(LAST_DAY, 16),
                bag().sown(0).moved(5, 18).look(LAST_DAY, 16));
        assertThat(on(LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG)
                        .comparison()
                        .orElseThrow()
                        .doubts())
                .contains(Doubt.LOOKS_DIFFER)
                .doesNotContain(Doubt.BAG_COUNTED_LATE);
    }

    @Test
    void two_bags_are_compared_by_their_roots() {
        List<TrialWay> bags = List.of(
                new TrialWay("A", Method.BAG, true, null, true), new TrialWay("B", Method.BAG, true, null, false));
        block(
                new Seen(bags.get(0)).sown(0).look(3, 12).look(LAST_DAY, 18),
                new Seen(bags.get(1)).sown(0).look(3, 6).look(LAST_DAY, 17));

        assertThat(on(LAST_DAY, TrialKind.SOAK, bags).comparison().orElseThrow().ways())
                .extracting(way -> way.sprouted().came())
                .containsExactly(18, 17);
    }

    @Test
    void a_block_of_which_one_way_is_missing_is_left_out_and_blocks_add_up() {
        block(tray().sown(0).look(LAST_DAY, 16), bag().sown(0).moved(6, 20).look(LAST_DAY, 17));
        block(tray().sown(0).look(LAST_DAY, 12), bag().sown(0).moved(6, 20).look(LAST_DAY, 13));
        block(
                tray().sown(0).look(LAST_DAY, 12),
                bag().ofLot(new UUID(2, 3)).sown(0).moved(6, 9).look(LAST_DAY, 3));
        block(
                tray().sown(0).look(9, 12).look(LAST_DAY, 10),
                bag().sown(0).moved(6, 20).look(LAST_DAY, 13));
        TrialReading reading = on(LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG);
        WaysCompared compared = reading.comparison().orElseThrow();

        assertThat(compared.ways()).extracting(way -> way.sprouted().of()).containsExactly(2 * SEEDS, 2 * SEEDS);
        assertThat(compared.doubts()).doesNotContain(Doubt.ONE_TRAY_A_WAY);
        assertThat(reading.blocks().get(2).get(1).leftOut()).contains(WayOfBlock.LeftOut.OTHER_LOT);
        assertThat(reading.blocks().get(3).get(0).leftOut()).contains(WayOfBlock.LeftOut.COUNTS_FELL);
    }

    @Test
    void other_days_and_other_warmth_are_doubted() {
        block(
                tray().sown(0).at(24).look(LAST_DAY, 16),
                bag().sown(2).at(27).moved(6, 20).look(LAST_DAY, 17));

        assertThat(on(LAST_DAY, TrialKind.METHOD, TRAY_OR_BAG)
                        .comparison()
                        .orElseThrow()
                        .doubts())
                .contains(Doubt.SOWN_APART, Doubt.WARMTH_DIFFERED);
        assertThat(on(LAST_DAY, TrialKind.HEAT, TRAY_OR_BAG)
                        .comparison()
                        .orElseThrow()
                        .doubts())
                .doesNotContain(Doubt.WARMTH_DIFFERED);
    }

    @Test
    void of_three_ways_each_two_are_compared_and_chances_are_raised_for_that() {
        block(
                new Seen(THREE_WARMTHS.get(0)).sown(0).look(11, 0).look(12, 15).look(LAST_DAY, 17),
                new Seen(THREE_WARMTHS.get(1)).sown(0).look(8, 0).look(9, 12).look(LAST_DAY, 17),
                new Seen(THREE_WARMTHS.get(2)).sown(0).look(6, 0).look(7, 15).look(LAST_DAY, 16));
        List<TrialReading.Pair> pairs =
                on(LAST_DAY, TrialKind.WARMTH, THREE_WARMTHS).pairs();

        assertThat(pairs)
                .extracting(pair -> pair.first() + " " + pair.second())
                .containsExactly("21 °C 24 °C", "21 °C 27 °C", "24 °C 27 °C");
        assertThat(pairs).allSatisfy(pair -> {
            assertThat(pair.speedChance())
                    .isGreaterThan(pair.comparison().speedChance().orElseThrow());
            assertThat(pair.shareChance()).isEqualTo(1);
        });
        assertThat(pairs.get(1).speedChance()).isLessThan(0.05);
    }
}
