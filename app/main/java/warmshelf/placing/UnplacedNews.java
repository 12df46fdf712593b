package warmshelf.placing;

import java.util.List;
import java.util.Map;
import warmshelf.sowing.HistoryStore;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** The requests that wait for a place, told beside the racks to those who place them. */
final class UnplacedNews implements Aside {
    private final HistoryStore histories;
    private final RequestSuggestions suggestions;

    UnplacedNews(HistoryStore histories, RequestSuggestions suggestions) {
        this.histories = histories;
        this.suggestions = suggestions;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        return Map.of(
                "unplaced",
                visitor.reach().coordinates()
                        ? suggestions.of(histories.underWay(), visitor.today(), visitor.reach(), visitor.units())
                        : List.of());
    }
}
