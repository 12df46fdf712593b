package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Where a member says how they want to be reminded. */
final class ReminderPages implements Pages {
    private final CalendarLinkStore links;
    private final MailWishStore wishes;
    private final BrowserSession browsers;
    private final ReminderView view;

    ReminderPages(CalendarLinkStore links, MailWishStore wishes, BrowserSession browsers, ReminderView view) {
        this.links = links;
        this.wishes = wishes;
        this.browsers = browsers;
        this.view = view;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/reminders", this::show, Role.MEMBER);
        routes.post("/reminders/calendar", ctx -> make(ctx, CalendarPart.ALL), Role.MEMBER);
        routes.post("/reminders/calendar/removal", ctx -> end(ctx, CalendarPart.ALL), Role.MEMBER);
        routes.post("/reminders/duty-calendar", ctx -> make(ctx, CalendarPart.DUTY), Role.MEMBER);
        routes.post("/reminders/duty-calendar/removal", ctx -> end(ctx, CalendarPart.DUTY), Role.MEMBER);
        routes.post("/reminders/letters", this::changeLetters, Role.MEMBER);
    }

    private void show(Context ctx) {
        Respond.page(ctx, "reminder/show.peb", view.page(Visitor.of(ctx)));
    }

    /** The address is shown this once, in the answer itself: it is not kept, so no later page could show it. */
    private void make(Context ctx, CalendarPart part) {
        Visitor visitor = Visitor.of(ctx);
        String token = links.make(visitor.memberId(), part);
        Respond.page(
                ctx,
                "reminder/show.peb",
                view.withAddress(visitor, part, browsers.wholeAddress(ctx, "/calendar/" + token + ".ics")));
    }

    private void end(Context ctx, CalendarPart part) {
        links.end(Visitor.of(ctx).memberId(), part);
        Respond.seeOther(ctx, "/reminders", SAY.calendarEnded());
    }

    private void changeLetters(Context ctx) {
        if (!view.mail()) {
            throw Refusal.conflict(SAY.noMailServer());
        }
        ReminderForm form = new ReminderForm(ctx.formParamMap());
        Optional<MailWish> wish = form.wish();
        if (wish.isEmpty()) {
            Respond.again(ctx, "reminder/show.peb", view.withMailForm(Visitor.of(ctx), form.reader()));
            return;
        }
        wishes.keep(Visitor.of(ctx).memberId(), wish.get());
        Respond.seeOther(
                ctx,
                "/reminders",
                wish.get().equals(MailWish.NONE)
                        ? SAY.noLetters()
                        : SAY.lettersGo(wish.get().address()));
    }
}
