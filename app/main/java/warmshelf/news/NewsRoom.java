package warmshelf.news;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** News, wired. */
public final class NewsRoom {
    private final NewsReadStore news;

    /**
     * The news of a group.
     *
     * @param titles of sowings
     * @param problem the words for a problem's code
     */
    public NewsRoom(
            Database database,
            Audit audit,
            Function<Collection<UUID>, Map<UUID, String>> titles,
            UnaryOperator<String> problem) {
        this.news = new NewsReadStore(database, audit, new NewsReadStore.Names() {
            @Override
            public Map<UUID, String> titles(Collection<UUID> sowings) {
                return titles.apply(sowings);
            }

            @Override
            public String problem(String word) {
                return problem.apply(word);
            }
        });
    }

    public List<Pages> pages() {
        return List.of(new NewsPages(news));
    }

    /** What Today tells of them. */
    public Aside today() {
        return new TodayNews(news);
    }

    /** What is new for a member, the newest first. */
    public List<NewsLine> lines(UUID member) {
        return news.lines(member);
    }
}
