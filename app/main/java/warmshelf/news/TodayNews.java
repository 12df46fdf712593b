package warmshelf.news;

import java.util.Map;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** What Today tells of news. */
final class TodayNews implements Aside {
    private final NewsReadStore news;

    TodayNews(NewsReadStore news) {
        this.news = news;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        return Map.of("news", news.lines(visitor.memberId()));
    }
}
