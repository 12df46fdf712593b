package warmshelf.season;

import java.util.List;
import java.util.Map;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** Tells on Today that a season is closed, and once the next is open that last season's sowings can be asked for again. */
final class SeasonNews implements Aside {
    private final SeasonTurnStore turns;
    private final SeasonCountStore counts;

    SeasonNews(SeasonTurnStore turns, SeasonCountStore counts) {
        this.turns = turns;
        this.counts = counts;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        List<SeasonClosing> closings = turns.closings();
        SeasonClosing last = closings.isEmpty() ? null : closings.get(0);
        boolean closed = last != null && last.season() == visitor.season();
        return Map.of(
                "seasonClosed",
                closed,
                "seasonOver",
                last == null ? 0 : last.season(),
                "askAgainCount",
                last == null || closed ? 0 : askAgain(visitor, last.season()));
    }

    /** How many sowings a member had in a season who has asked for nothing in this one yet. */
    private int askAgain(Visitor visitor, int before) {
        return counts.ofMember(visitor.memberId(), visitor.season()) > 0
                ? 0
                : counts.ofMember(visitor.memberId(), before);
    }
}
