package warmshelf.news;

import static warmshelf.news.NewsSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** What is new is counted in the frame of each page, and gone once the page that shows it is opened, or by one press. */
final class NewsPages implements Pages {
    private final NewsReadStore news;

    NewsPages(NewsReadStore news) {
        this.news = news;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.beforeMatched(this::see);
        routes.post("/news/seen", this::seeAll, Role.MEMBER);
    }

    @Override
    public int newFor(Visitor visitor) {
        return news.count(visitor.memberId());
    }

    private void see(Context ctx) {
        String purpose = ctx.header("Sec-Purpose");
        boolean looks = ctx.method().equals(HandlerType.GET) && (purpose == null || !purpose.contains("prefetch"));
        if (looks) {
            Visitor.maybe(ctx).ifPresent(visitor -> news.see(visitor.memberId(), ctx.path()));
        }
    }

    /** What came after the list was made stays new. */
    private void seeAll(Context ctx) {
        news.seeAll(Visitor.of(ctx).memberId(), until(ctx));
        Respond.seeOther(ctx, "/today", SAY.allSeen());
    }

    private static OffsetDateTime until(Context ctx) {
        try {
            return OffsetDateTime.parse(String.valueOf(ctx.formParam("until")));
        } catch (DateTimeParseException unreadable) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.momentUnfit());
        }
    }
}
