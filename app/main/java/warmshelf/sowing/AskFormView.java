package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.SeedSource;
import warmshelf.seed.StorageKind;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Gathers the page of the second question of Ask. */
final class AskFormView {
    /** What a new form stands at. */
    private static final Map<String, String> USUAL = Map.of(
            "method", "cells",
            "heat", "warm",
            "after", "light",
            "container", "half-tray",
            "where", "outdoors",
            "source", SeedSource.PACKET.word(),
            "storage", StorageKind.UNKNOWN.word(),
            "cellsInATray", String.valueOf(AskForm.USUAL_CELLS),
            "risk", "");

    /** Enough for a plant of most lots; common practice, and the plan reckons it for the lot itself. */
    private static final int SEEDS_A_PLANT = 2;

    private final CropCatalogue crops;
    private final SowingPlanner planner;
    private final LotStore lots;
    private final LotBalanceStore balances;
    private final UsualPlantsStore plants;

    AskFormView(SowingStores stores, UsualPlantsStore plants) {
        this.crops = stores.crops();
        this.planner = stores.planner();
        this.lots = stores.lots();
        this.balances = stores.balances();
        this.plants = plants;
    }

    /** Whether anything can be counted back from this member's frost. */
    boolean isFrostKnown(Visitor visitor) {
        return planner.climate(AskPlanView.grower(visitor)).isPresent();
    }

    /** A form that stands at what is usual where nothing was answered yet; a lot that is gone is said so. */
    AskFormPage fresh(Visitor visitor, Map<String, List<String>> given) {
        Map<String, List<String>> typed = new HashMap<>(given);
        USUAL.forEach((field, usual) -> typed.putIfAbsent(field, List.of(usual)));
        FormReader form = new FormReader(typed);
        Optional<Lot> lot = lot(form);
        Crop crop = crop(form, lot.orElse(null));
        if (crop != null) {
            typed.putIfAbsent("plants", List.of(String.valueOf(start(crop, lot.orElse(null), visitor))));
        }
        if (lot.isEmpty() && !form.text("lot").isEmpty() && !form.text("lot").equals(AskForm.NEW_PACKET)) {
            form.refuse("lot", SAY.lotGone());
        }
        return page(visitor, form);
    }

    /** As many plants as the group usually wants of it, or as the lot has seed for with one to spare for each. */
    private int start(Crop crop, @Nullable Lot lot, Visitor visitor) {
        int usual = plants.of(crop.id());
        Integer free = lot == null ? null : balances.of(lot).freeFor(visitor.memberId());
        return free == null ? usual : Math.max(1, Math.min(usual, free / SEEDS_A_PLANT));
    }

    /** The form as it came, with what is wrong with it. */
    AskFormPage page(Visitor visitor, FormReader form) {
        Lot lot = lot(form).orElse(null);
        return new AskFormPage(
                form,
                isFrostKnown(visitor),
                lot == null ? null : chosen(lot, visitor),
                crop(form, lot),
                lot == null ? choices() : List.of(),
                AskAssumed.of(form),
                AskChoices.all(visitor.units().inInches()),
                AskAddress.firstQuestion(form.typed()));
    }

    private AskFormPage.Chosen chosen(Lot lot, Visitor visitor) {
        return new AskFormPage.Chosen(
                lot.id().toString(),
                lot.variety(),
                lot.seedYear(),
                new BalanceWords(balances.of(lot)).whoseAndFree(visitor.memberId()));
    }

    private Optional<Lot> lot(FormReader form) {
        String typed = form.text("lot");
        return typed.isEmpty() || typed.equals(AskForm.NEW_PACKET)
                ? Optional.empty()
                : lots.withSeed().stream()
                        .filter(each -> each.id().toString().equals(typed))
                        .findFirst();
    }

    private @Nullable Crop crop(FormReader form, @Nullable Lot lot) {
        return lot != null
                ? crops.orUnlisted(lot.cropId())
                : crops.find(form.text("crop")).orElse(null);
    }

    private List<Choice> choices() {
        return crops.fromSeed().stream()
                .map(crop -> new Choice(crop.id(), crop.name() + AskFormPage.sownElsewhere(crop)))
                .toList();
    }
}
