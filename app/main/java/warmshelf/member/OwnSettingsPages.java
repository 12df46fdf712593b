package warmshelf.member;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Database;
import warmshelf.web.Choice;
import warmshelf.web.Countries;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** What members set for themselves: name, garden's postcode, units, passphrase. */
public final class OwnSettingsPages implements Pages {
    private static final String TEMPLATE = "member/settings.peb";

    private final Database database;
    private final MemberStore members;
    private final SessionStore sessions;
    private final Passphrases passphrases;
    private final Doorway doorway;

    public OwnSettingsPages(
            Database database, MemberStore members, SessionStore sessions, Passphrases passphrases, Doorway doorway) {
        this.database = database;
        this.members = members;
        this.sessions = sessions;
        this.passphrases = passphrases;
        this.doorway = doorway;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/settings", this::show, Role.MEMBER);
        routes.post("/settings", this::change, Role.MEMBER);
        routes.post("/settings/passphrase", this::changePassphrase, Role.MEMBER);
    }

    private void show(Context ctx) {
        ctx.render(TEMPLATE, model(OwnSettingsForm.of(me(ctx)), empty()));
    }

    private void change(Context ctx) {
        OwnSettingsForm form = OwnSettingsForm.from(ctx.formParamMap());
        if (!form.reader().ok()) {
            Respond.again(ctx, TEMPLATE, model(form.reader(), empty()));
            return;
        }
        try {
            if (!members.change(Visitor.of(ctx).memberId(), form.version(), form.settings())) {
                throw Refusal.of(
                        HttpStatus.CONFLICT,
                        "These settings were changed meanwhile, perhaps on another device, so nothing was saved."
                                + " Open the settings again to see them as they are now.");
            }
        } catch (IntegrityConstraintViolationException nameTaken) {
            form.reader()
                    .refuse(
                            "name",
                            "Your name was '%s', which somebody here has already; add a letter or your street."
                                    .formatted(form.settings().name()));
            Respond.again(ctx, TEMPLATE, model(form.reader(), empty()));
            return;
        }
        Respond.seeOther(ctx, "/settings", "Your settings are saved.");
    }

    private void changePassphrase(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        doorway.limitSignIn(ctx, visitor.name());
        FormReader form = new FormReader(ctx.formParamMap());
        String current = form.requiredText("current", "Passphrase now", Passphrases.LONGEST);
        String next = PassphraseRule.read(form, "passphrase", "New passphrase", visitor.name());
        if (form.ok() && !passphrases.fits(current, members.passphraseHash(visitor.memberId()))) {
            form.refuse("current", "Passphrase now is not the one you sign in with.");
        }
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, model(OwnSettingsForm.of(me(ctx)), form));
            return;
        }
        String hash = passphrases.hash(next);
        doorway.letIn(ctx, database.sql().transactionResult(inside -> {
            members.setPassphrase(inside.dsl(), visitor.memberId(), hash);
            return sessions.open(inside.dsl(), visitor.memberId());
        }));
        Respond.seeOther(ctx, "/settings", "Your passphrase is changed; other devices are signed out.");
    }

    private Member me(Context ctx) {
        return members.find(Visitor.of(ctx).memberId()).orElseThrow(Refusal::notFound);
    }

    private static FormReader empty() {
        return new FormReader(Map.of());
    }

    private static Map<String, Object> model(FormReader form, FormReader passphraseForm) {
        return Map.of(
                "form", form,
                "passphraseForm", passphraseForm,
                "countries", Countries.byName(),
                "temperatures",
                        List.of(
                                new Choice(OwnSettingsForm.AS_THE_GROUP, "As the group shows them"),
                                new Choice("C", "Degrees Celsius"),
                                new Choice("F", "Degrees Fahrenheit")),
                "lengths",
                        List.of(
                                new Choice(OwnSettingsForm.AS_THE_GROUP, "As the group shows them"),
                                new Choice("cm", "Centimetres"),
                                new Choice("in", "Inches")));
    }
}
