package warmshelf.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.SeasonPlan;

/**
 * Spares people carrying trays from one site to another: what comes off a mat goes under a light of the same site where one
 * is free. The rules of a plan know no sites; a group's circuits go by them, and the names of its lit shelves begin with them.
 */
final class NearbyLight {
    private final PlanQuestion question;
    private final Map<String, @Nullable String> sites = new HashMap<>();

    NearbyLight(PlanQuestion question) {
        this.question = question;
        for (PlannedMat mat : question.mats()) {
            sites.put(mat.id(), mat.circuit());
        }
    }

    /** Whether a lit shelf stands where a mat lies. */
    boolean isNear(String mat, String litShelf) {
        String site = sites.get(mat);
        return site != null && litShelf.startsWith(site + " · ");
    }

    /** The same plan with every place under a light that can be brought nearer brought nearer, in the order of its stays. */
    SeasonPlan arranged(SeasonPlan plan) {
        List<PlacedStay> placed = new ArrayList<>(plan.placed());
        for (int i = 0; i < placed.size(); i++) {
            PlacedStay stay = placed.get(i);
            if (stay.light() != null && !isNear(stay.mat(), stay.light().shelf())) {
                placed.set(i, nearer(stay, placed));
            }
        }
        return new SeasonPlan(placed, plan.setPoints(), plan.refused());
    }

    private PlacedStay nearer(PlacedStay stay, List<PlacedStay> placed) {
        PlacedStay.LitStay light = java.util.Objects.requireNonNull(stay.light());
        List<PlacedStay> others =
                placed.stream().filter(other -> !other.equals(stay)).toList();
        Optional<PlacedStay.LitStay> found = new LightFit(question, others)
                .on(light.days(), light.slot().quarters(), shelf -> isNear(stay.mat(), shelf));
        return new PlacedStay(stay.request(), stay.mat(), stay.place(), stay.slot(), stay.days(), found.orElse(light));
    }
}
