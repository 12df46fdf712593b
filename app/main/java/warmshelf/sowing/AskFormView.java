package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.Lot;
import warmshelf.seed.LotBalance;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Gathers the page of the form that asks for space. */
final class AskFormView {
    private final CropCatalogue crops;
    private final SowingPlanner planner;
    private final LotStore lots;
    private final LotBalanceStore balances;

    AskFormView(SowingStores stores) {
        this.crops = stores.crops();
        this.planner = stores.planner();
        this.lots = stores.lots();
        this.balances = stores.balances();
    }

    AskFormPage page(Visitor visitor, FormReader form) {
        return new AskFormPage(
                form,
                planner.climate(AskPlanView.grower(visitor)).isPresent(),
                lotChoices(visitor.memberId(), form.text("lot")),
                crops.fromSeed().stream()
                        .map(crop -> new Choice(crop.id(), crop.name() + AskFormPage.sownElsewhere(crop)))
                        .toList(),
                crops.fromSlips(),
                visitor.units().inInches());
    }

    /** The lots of which this member may plan on something, and the one chosen already. */
    private List<Choice> lotChoices(UUID member, String chosen) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(AskForm.NEW_PACKET, SAY.newPacket()));
        List<Lot> box = lots.withSeed();
        Map<UUID, LotBalance> all = balances.of(box);
        for (Lot lot : box) {
            LotBalance balance = Objects.requireNonNull(all.get(lot.id()));
            if (balance.isUsedUpFor(member) && !lot.id().toString().equals(chosen)) {
                continue;
            }
            Crop crop = crops.orUnlisted(lot.cropId());
            String whose = new BalanceWords(balance).whoseAndFree(member);
            choices.add(new Choice(
                    lot.id().toString(),
                    "%s · %s %d (%s)%s"
                            .formatted(
                                    crop.name(),
                                    lot.variety(),
                                    lot.seedYear(),
                                    whose,
                                    AskFormPage.sownElsewhere(crop))));
        }
        return choices;
    }
}
