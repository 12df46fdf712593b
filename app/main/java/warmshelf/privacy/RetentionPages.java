package warmshelf.privacy;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import warmshelf.db.Submission;
import warmshelf.exchange.ExchangeRoom;
import warmshelf.group.LinkPurpose;
import warmshelf.leaving.LeavingRoom;
import warmshelf.news.NewsBookStore;
import warmshelf.reminder.push.MessageLife;
import warmshelf.web.KnownDevice;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SessionCookie;

/** What is kept of whom, how long, and who sees it. Each figure is the one by which the program goes. */
final class RetentionPages implements Pages {
    @Override
    public void register(RoutesConfig routes) {
        // Anyone: whoever is to join can read first what the group will know of them.
        routes.get("/privacy", this::show, Role.ANYONE);
    }

    /** How long things are kept; days, but where the name says hours. */
    private record RetentionPage(
            long sessionDays,
            long deviceDays,
            long joinDays,
            long signInDays,
            long formDays,
            long messageDays,
            long newsDays,
            long leavingHours,
            long incomingHours) {}

    private void show(Context ctx) {
        Respond.page(
                ctx,
                "privacy/retention.peb",
                new RetentionPage(
                        SessionCookie.LIFE.toDays(),
                        KnownDevice.KEPT_BY_BROWSER.toDays(),
                        LinkPurpose.JOIN.life().toDays(),
                        LinkPurpose.SIGN_IN.life().toDays(),
                        Submission.KEPT.toDays(),
                        MessageLife.KEPT.toDays(),
                        NewsBookStore.KEPT.toDays(),
                        LeavingRoom.UNDOABLE.toHours(),
                        ExchangeRoom.KEPT.toHours()));
    }
}
