package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.LotBalance;
import warmshelf.web.Visitor;

/** Judges what a member gathered by what judges a single request, one after the other as they are sent. */
final class GatheredView {
    private final GatheredStore gathered;
    private final AskPlanView plans;

    GatheredView(GatheredStore gathered, AskPlanView plans) {
        this.gathered = gathered;
        this.plans = plans;
    }

    /**
     * One gathered request as it stands now.
     *
     * @param plan what would come of it; null where nothing can be planned so
     * @param trouble why it could not be sent now; empty: it could
     */
    record Judged(GatheredStore.Gathered gathered, @Nullable AskPlan plan, String trouble) {}

    /**
     * One line on Ask.
     *
     * @param sow the day to sow; null where the plan has none
     * @param address of its plan, to be changed there
     */
    public record Line(
            UUID id,
            String title,
            String plants,
            int seeds,
            @Nullable LocalDate sow,
            String trouble,
            String address) {}

    List<Line> lines(Visitor visitor) {
        return judged(visitor).stream().map(GatheredView::line).toList();
    }

    List<Judged> judged(Visitor visitor) {
        Map<UUID, Integer> taken = new HashMap<>();
        List<Judged> all = new ArrayList<>();
        for (GatheredStore.Gathered each : gathered.of(visitor.memberId())) {
            Judged judged = judged(visitor, each, taken);
            all.add(judged);
            AskPlan plan = judged.plan();
            if (judged.trouble().isEmpty() && plan != null && plan.balance() != null) {
                taken.merge(plan.balance().lot().id(), plan.seeds().seeds(), Integer::sum);
            }
        }
        return all;
    }

    private Judged judged(Visitor visitor, GatheredStore.Gathered each, Map<UUID, Integer> taken) {
        AskPlanView.Reading reading = plans.read(visitor, typed(each));
        if (reading.plan().isEmpty()) {
            // The first says enough: without its lot, a form also misses what a new packet would need.
            return new Judged(
                    each, null, reading.form().problems().values().iterator().next());
        }
        AskPlan plan = reading.plan().get();
        if (!plan.canBeSent()) {
            return new Judged(each, plan, SAY.tooLateToSow());
        }
        return new Judged(
                each,
                plan,
                goneToOthersBefore(plan, taken)
                        .map(why -> why.words(visitor.units()))
                        .orElse(""));
    }

    /** Where those gathered before it use up the lot that they share. */
    private static Optional<SowingRefusal> goneToOthersBefore(AskPlan plan, Map<UUID, Integer> taken) {
        LotBalance balance = plan.balance();
        if (balance == null) {
            return Optional.empty();
        }
        UUID grower = plan.asking().grower().memberId();
        Integer free = balance.freeFor(grower);
        int before = taken.getOrDefault(balance.lot().id(), 0);
        return free != null && before > 0 && free - before < plan.seeds().seeds()
                ? Optional.of(
                        new SowingRefusal.GatheredBefore(before, plan.seeds().seeds(), free))
                : Optional.empty();
    }

    static Map<String, List<String>> typed(GatheredStore.Gathered each) {
        return each.answers().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> List.of(entry.getValue())));
    }

    private static Line line(Judged judged) {
        GatheredStore.Gathered gathered = judged.gathered();
        AskPlan plan = judged.plan();
        return new Line(
                gathered.id(),
                gathered.title(),
                gathered.answers().getOrDefault("plants", ""),
                plan == null ? 0 : plan.seeds().seeds(),
                plan == null ? null : AskPlanPages.Days.of(plan.timeline()).sow(),
                judged.trouble(),
                AskAddress.with(
                        plan == null ? "/ask" : "/ask/plan",
                        gathered.answers(),
                        AskAddress.GATHERED,
                        gathered.id().toString()));
    }
}
