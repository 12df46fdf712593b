package warmshelf.reminder;

import static warmshelf.reminder.ReminderSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import warmshelf.reminder.push.EndpointRule;
import warmshelf.reminder.push.PushAddressStore;
import warmshelf.reminder.push.PushMessage;
import warmshelf.reminder.push.PushNoticeStore;
import warmshelf.reminder.push.PushTarget;
import warmshelf.reminder.push.PushWishStore;
import warmshelf.web.Pages;
import warmshelf.web.RateLimits;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Where a member has a phone told, and says of what. */
final class PushPages implements Pages {
    /** The worker posts here by itself when the browser gives the device another address; it knows no form token. */
    private static final String MOVED = "/reminders/devices/moved";

    private static final Duration TEST_COUNTS = Duration.ofHours(1);
    private static final int CHANGES = 20;
    private static final int TESTS = 5;

    private final PushAddressStore devices;
    private final PushWishStore wishes;
    private final PushNoticeStore notices;
    private final ReminderView view;
    private final EndpointRule rule;
    private final RateLimits limits;
    private final Clock clock;

    PushPages(
            PushAddressStore devices,
            PushWishStore wishes,
            PushNoticeStore notices,
            ReminderView view,
            EndpointRule rule,
            RateLimits limits,
            Clock clock) {
        this.devices = devices;
        this.wishes = wishes;
        this.notices = notices;
        this.view = view;
        this.rule = rule;
        this.limits = limits;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/reminders/devices", this::add, Role.MEMBER);
        routes.post("/reminders/devices/wishes", this::changeWishes, Role.MEMBER);
        routes.post(MOVED, this::move, Role.MEMBER);
        routes.post("/reminders/devices/{id}/removal", this::stop, Role.MEMBER);
        routes.post("/reminders/devices/{id}/test", this::test, Role.MEMBER);
    }

    @Override
    public Set<String> forScripts() {
        return Set.of(MOVED);
    }

    private void add(Context ctx) {
        Visitor visitor = limited(ctx);
        PushForm form = new PushForm(ctx.formParamMap());
        String name = form.name(visitor.today());
        Optional<PushTarget> target = form.target(rule);
        if (target.isPresent() && !devices.keep(visitor.memberId(), visitor.csrfToken(), target.get(), name)) {
            form.reader().refuse("device", SAY.devicesEnough(PushAddressStore.MOST_DEVICES));
        }
        if (!form.reader().ok()) {
            Respond.again(ctx, "reminder/show.peb", view.withPushForm(visitor, withWishes(form, visitor)));
            return;
        }
        Respond.seeOther(ctx, "/reminders", SAY.deviceAdded(name));
    }

    /** The form that came back names a device only; what is wanted stays as it is kept. */
    private FormReader withWishes(PushForm form, Visitor visitor) {
        Map<String, List<String>> typed = new HashMap<>();
        PushForm.filled(wishes.of(visitor.memberId())).typed().forEach((name, text) -> typed.put(name, List.of(text)));
        typed.put("device", List.of(form.reader().text("device")));
        FormReader whole = new FormReader(typed);
        form.reader().problems().forEach(whole::refuse);
        return whole;
    }

    private void changeWishes(Context ctx) {
        Visitor visitor = limited(ctx);
        wishes.keep(visitor.memberId(), new PushForm(ctx.formParamMap()).wish());
        Respond.seeOther(ctx, "/reminders", SAY.keptForDevices());
    }

    private void stop(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        if (!devices.stop(visitor.memberId(), Respond.id(ctx, "id"))) {
            throw Refusal.notFound();
        }
        Respond.seeOther(ctx, "/reminders", SAY.deviceStopped());
    }

    private void test(Context ctx) {
        Visitor visitor = limited(ctx);
        limits.take("push test by " + visitor.memberId(), TESTS, Duration.ofMinutes(1));
        PushMessage notice = new PushMessage(
                "test " + UUID.randomUUID(),
                SAY.noticesWork(),
                SAY.testNotice(),
                "/reminders",
                true,
                "test",
                clock.instant().plus(TEST_COUNTS));
        if (!notices.layFor(visitor.memberId(), Respond.id(ctx, "id"), notice)) {
            throw Refusal.notFound();
        }
        Respond.seeOther(ctx, "/reminders", SAY.testOnItsWay());
    }

    private void move(Context ctx) {
        Visitor visitor = limited(ctx);
        Map<String, List<String>> given = new HashMap<>();
        PushBody.read(ctx.body()).forEach((name, text) -> given.put(name, List.of(text)));
        PushForm form = new PushForm(given);
        Optional<PushTarget> target = form.target(rule);
        if (target.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .json(Map.of(
                            "problem", String.join(" ", form.reader().problems().values())));
            return;
        }
        boolean moved = devices.move(visitor.memberId(), visitor.csrfToken(), target.get());
        ctx.json(Map.of("told", moved));
    }

    private Visitor limited(Context ctx) {
        if (!view.push()) {
            throw Refusal.conflict(SAY.noPushKeys());
        }
        Visitor visitor = Visitor.of(ctx);
        limits.take("push change by " + visitor.memberId(), CHANGES, Duration.ofSeconds(30));
        return visitor;
    }
}
