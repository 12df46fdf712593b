package warmshelf.placing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.SpaceAnswer;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.decision.Reach;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.finding.trial.TrialWarnings;
import warmshelf.sowing.History;
import warmshelf.words.Units;

/** Works out where each waiting request could lie, the earliest ideal day first. */
final class RequestSuggestions {
    private final RequestWishes wishes;
    private final TrialWarmthStore trials;

    RequestSuggestions(RequestWishes wishes, TrialWarmthStore trials) {
        this.wishes = wishes;
        this.trials = trials;
    }

    /**
     * A waiting request with what first fit suggests for it.
     *
     * @param warnings what placing this one as suggested would do to a trial that it is of
     */
    public record Line(
            History history,
            SpaceRequest request,
            @Nullable SpaceOffer offer,
            @Nullable String noSpace,
            TrialWarnings warnings) {}

    /**
     * Those that wait among some sowings; each accepted place is taken before the next is sought.
     *
     * @param reach of whoever places them: nothing is suggested where they may not decide
     */
    List<Line> of(List<History> underWay, LocalDate today, Reach reach, Units units) {
        List<SpaceWish> asked = new ArrayList<>();
        Map<UUID, History> waiting = new HashMap<>();
        for (History history : underWay) {
            if (history.request() != null && history.request().isWaiting()) {
                waiting.put(history.sowing().id(), history);
                asked.add(wishes.of(history, history.request(), today));
            }
        }
        List<Line> lines = new ArrayList<>();
        if (asked.isEmpty()) {
            return lines;
        }
        new FirstFit(wishes.board(today, reach), today).answerAll(asked).forEach((sowing, answer) -> {
            History history = waiting.get(sowing);
            if (history != null && history.request() != null) {
                lines.add(line(history, history.request(), answer, units));
            }
        });
        return lines;
    }

    private Line line(History history, SpaceRequest request, SpaceAnswer answer, Units units) {
        if (answer instanceof SpaceAnswer.Space found) {
            return new Line(
                    history,
                    request,
                    found.offer(),
                    null,
                    trials.warnings(history.sowing(), found.offer().warm()));
        }
        return new Line(
                history, request, null, ((SpaceAnswer.None) answer).reason().words(units), TrialWarnings.NONE);
    }
}
