package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Asking again for all that a member grew in the season before: gathered by one press, then looked through and sent at once. */
final class AskAgainPages implements Pages {
    private final SowingStore sowings;
    private final AskFormView forms;
    private final GatheredStore gathered;

    AskAgainPages(SowingStore sowings, AskFormView forms, GatheredStore gathered) {
        this.sowings = sowings;
        this.forms = forms;
        this.gathered = gathered;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/ask/again", this::gather, Role.MEMBER);
    }

    private void gather(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<GatheredStore.NewlyGathered> again = ofSeasonBefore(visitor);
        int added = gathered.addAll(visitor.memberId(), again);
        Respond.seeOther(ctx, "/ask", said(again.size(), added));
    }

    /** All that Ask would ask for it, with what is usual where a sowing does not tell. */
    private Map<String, String> answers(Visitor visitor, Sowing sowing) {
        Map<String, List<String>> typed = AskAddress.answersOf(sowing).entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, each -> List.of(each.getValue())));
        return AskAddress.toKeep(forms.fresh(visitor, typed).form());
    }

    private static String said(int all, int added) {
        if (all == 0) {
            return SAY.nothingToAskAgain();
        }
        return added == all ? SAY.gatheredAgain(added) : SAY.gatheredSomeAgain(added, all - added, GatheredStore.MOST);
    }

    /** What was grown in the last season in which the member grew anything, each kind once; the ways of a trial are declared anew. */
    private List<GatheredStore.NewlyGathered> ofSeasonBefore(Visitor visitor) {
        List<Sowing> grown = sowings.ofMember(visitor.memberId()).stream()
                .filter(sowing -> sowing.isBefore(visitor.season()))
                .filter(sowing -> sowing.stage() != SowingStage.WITHDRAWN && sowing.trial() == null)
                .toList();
        OptionalInt season = grown.stream().mapToInt(Sowing::season).max();
        Map<Map<String, String>, String> titles = new LinkedHashMap<>();
        grown.stream()
                .filter(sowing -> season.isPresent() && sowing.isOf(season.getAsInt()))
                .forEach(sowing -> titles.putIfAbsent(answers(visitor, sowing), sowing.title()));
        return titles.entrySet().stream()
                .map(each -> new GatheredStore.NewlyGathered(each.getValue(), each.getKey()))
                .toList();
    }
}
