package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.BiPredicate;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.Spelling;
import warmshelf.web.Visitor;

/** Finds what there is to grow by what somebody typed: lots of which they may plan on something, and crops. */
final class GrowView {
    /** More than a screen or two of lines nobody reads; typing finds the rest. */
    static final int SHOWN = 8;

    private static final int LONGEST = 80;

    private final CropCatalogue crops;
    private final LotStore lots;
    private final LotBalanceStore balances;
    private final LotUseStore use;

    GrowView(SowingStores stores) {
        this.crops = stores.crops();
        this.lots = stores.lots();
        this.balances = stores.balances();
        this.use = stores.use();
    }

    /**
     * What fits.
     *
     * @param text what was typed, shortened
     * @param forgiven whether nothing is spelled so, and these come near it
     * @param lots the own ones first
     * @param moreLots how many fit besides those shown
     * @param crops that can be sown from a packet which is not here yet; none where nothing was typed
     * @param slips crops found that are not raised from seed
     */
    record Found(
            String text, boolean forgiven, List<LotLine> lots, int moreLots, List<CropLine> crops, List<Crop> slips) {}

    /** A lot in one line: whose it is, what is free of it, how much comes up. */
    public record LotLine(String id, String crop, String variety, String words) {}

    /** A crop in one line. */
    public record CropLine(String id, String words, String elsewhere) {}

    Found find(String typed, Visitor visitor) {
        String text = typed.length() <= LONGEST
                ? typed.strip()
                : typed.substring(0, LONGEST).strip();
        Found exact = find(text, false, visitor);
        boolean nothing = exact.lots().isEmpty()
                && exact.crops().isEmpty()
                && exact.slips().isEmpty();
        return nothing && !text.isEmpty() ? find(text, true, visitor) : exact;
    }

    private Found find(String text, boolean forgiving, Visitor visitor) {
        BiPredicate<Crop, String> fits = forgiving ? near(text) : holds(text);
        Map<UUID, LotBalance> all = balances.of(lots.withSeed());
        List<LotBalance> found = all.values().stream()
                .filter(each -> !each.isUsedUpFor(visitor.memberId()))
                .filter(each -> fits.test(
                        crops.orUnlisted(each.lot().cropId()), each.lot().variety()))
                .sorted(order(visitor.memberId()))
                .toList();
        List<Crop> ofName = text.isEmpty()
                ? List.of()
                : crops.all().stream().filter(crop -> fits.test(crop, "")).toList();
        List<Crop> slips = ofName.stream().filter(crops.fromSlips()::contains).toList();
        return new Found(
                text,
                forgiving,
                lines(found.stream().limit(SHOWN).toList(), visitor),
                Math.max(0, found.size() - SHOWN),
                ofName.stream()
                        .filter(crop -> !slips.contains(crop))
                        .limit(SHOWN)
                        .map(GrowView::line)
                        .toList(),
                slips);
    }

    /** Every crop that can be sown, for whoever would rather read than type. */
    List<CropLine> everyCrop() {
        return crops.fromSeed().stream()
                .map(crop -> new CropLine(crop.id(), crop.name(), AskFormPage.sownElsewhere(crop)))
                .toList();
    }

    private static CropLine line(Crop crop) {
        return new CropLine(crop.id(), SAY.ownPacketOf(crop.name()), AskFormPage.sownElsewhere(crop));
    }

    private List<LotLine> lines(List<LotBalance> shown, Visitor visitor) {
        List<UUID> ids = shown.stream().map(each -> each.lot().id()).toList();
        Map<UUID, List<GerminationTest>> tests = lots.testsOf(ids);
        Map<UUID, List<GerminationTest>> results = use.results(ids);
        return shown.stream().map(each -> line(each, tests, results, visitor)).toList();
    }

    private LotLine line(
            LotBalance balance,
            Map<UUID, List<GerminationTest>> tests,
            Map<UUID, List<GerminationTest>> results,
            Visitor visitor) {
        Lot lot = balance.lot();
        Crop crop = crops.orUnlisted(lot.cropId());
        List<GerminationTest> evidence = new java.util.ArrayList<>(tests.getOrDefault(lot.id(), List.of()));
        evidence.addAll(results.getOrDefault(lot.id(), List.of()));
        long tenths =
                Math.round(10 * lot.share(crop, evidence, visitor.season()).mean());
        String whose = new BalanceWords(balance).whoseAndFree(visitor.memberId());
        return new LotLine(
                lot.id().toString(),
                crop.name() + AskFormPage.sownElsewhere(crop),
                lot.variety(),
                whose + " · " + SAY.comesUp(tenths));
    }

    private Comparator<LotBalance> order(UUID member) {
        List<String> inOrder = crops.all().stream().map(Crop::id).toList();
        return Comparator.comparing(
                        (LotBalance each) -> !Objects.equals(each.lot().ownerId(), member))
                .thenComparing(each -> each.isAskedFor(member))
                .thenComparing(each -> inOrder.indexOf(each.lot().cropId()))
                .thenComparing(each -> each.lot().variety());
    }

    private static BiPredicate<Crop, String> holds(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return (crop, variety) -> (crop.name() + "\n" + crop.species() + "\n" + variety)
                .toLowerCase(Locale.ROOT)
                .contains(lower);
    }

    private static BiPredicate<Crop, String> near(String text) {
        return (crop, variety) -> Spelling.meant(text, crop.name())
                || Spelling.meant(text, crop.species())
                || Spelling.meant(text, variety);
    }
}
