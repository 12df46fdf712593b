package warmshelf.reminder;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.web.BrowserSession;
import warmshelf.web.FormReader;
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
    private final boolean mail;

    /** With mail: whether this installation has a mail server to send by. */
    ReminderPages(CalendarLinkStore links, MailWishStore wishes, BrowserSession browsers, boolean mail) {
        this.links = links;
        this.wishes = wishes;
        this.browsers = browsers;
        this.mail = mail;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/reminders", this::show, Role.MEMBER);
        routes.post("/reminders/calendar", this::makeCalendar, Role.MEMBER);
        routes.post("/reminders/calendar/removal", this::endCalendar, Role.MEMBER);
        routes.post("/reminders/letters", this::changeLetters, Role.MEMBER);
    }

    private void show(Context ctx) {
        FormReader form =
                ReminderForm.filled(wishes.of(Visitor.of(ctx).memberId()).orElse(MailWish.NONE));
        ctx.render("reminder/show.peb", model(ctx, form, null));
    }

    private Map<String, @Nullable Object> model(Context ctx, FormReader form, @Nullable String calendar) {
        Map<String, @Nullable Object> model = new HashMap<>();
        model.put("form", form);
        model.put("mail", mail);
        model.put("hasCalendar", links.has(Visitor.of(ctx).memberId()));
        model.put("calendar", calendar);
        return model;
    }

    /** The address is shown this once, in the answer itself: it is not kept, so no later page could show it. */
    private void makeCalendar(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        String token = links.make(visitor.memberId());
        FormReader form = ReminderForm.filled(wishes.of(visitor.memberId()).orElse(MailWish.NONE));
        ctx.render("reminder/show.peb", model(ctx, form, browsers.wholeAddress(ctx, "/calendar/" + token + ".ics")));
    }

    private void endCalendar(Context ctx) {
        links.end(Visitor.of(ctx).memberId());
        Respond.seeOther(
                ctx, "/reminders", "The calendar’s address has ended; programs that had it see nothing any more.");
    }

    private void changeLetters(Context ctx) {
        if (!mail) {
            throw Refusal.conflict("No mail server is set for this installation, so it sends no letters.");
        }
        ReminderForm form = new ReminderForm(ctx.formParamMap());
        Optional<MailWish> wish = form.wish();
        if (wish.isEmpty()) {
            Respond.again(ctx, "reminder/show.peb", model(ctx, form.reader(), null));
            return;
        }
        wishes.keep(Visitor.of(ctx).memberId(), wish.get());
        Respond.seeOther(
                ctx,
                "/reminders",
                wish.get().equals(MailWish.NONE)
                        ? "You get no letters, and your address is forgotten."
                        : "Kept. Letters go to %s.".formatted(wish.get().address()));
    }
}
