package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Countries;
import warmshelf.words.FormReader;

/** What members set for themselves: name, garden's postcode, units, passphrase. */
public final class OwnSettingsPages implements Pages {
    private static final String TEMPLATE = "group/own-settings.peb";

    private final MemberStore members;
    private final AdmissionStore admissions;
    private final Passphrases passphrases;
    private final DoorPages door;
    private final BrowserSession browsers;

    public OwnSettingsPages(
            MemberStore members,
            AdmissionStore admissions,
            Passphrases passphrases,
            DoorPages door,
            BrowserSession browsers) {
        this.members = members;
        this.admissions = admissions;
        this.passphrases = passphrases;
        this.door = door;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/settings", this::show, Role.MEMBER);
        routes.post("/settings", this::change, Role.MEMBER);
        routes.post("/settings/passphrase", this::changePassphrase, Role.MEMBER);
    }

    private void show(Context ctx) {
        Respond.page(ctx, TEMPLATE, new SettingsPage(OwnSettingsForm.of(me(ctx)), empty()));
    }

    private void change(Context ctx) {
        OwnSettingsForm form = OwnSettingsForm.from(ctx.formParamMap());
        if (!form.reader().ok()) {
            Respond.again(ctx, TEMPLATE, new SettingsPage(form.reader(), empty()));
            return;
        }
        Visitor visitor = Visitor.of(ctx);
        Decision<UUID> decision = members.change(visitor.memberId(), form.version(), form.settings());
        if (decision instanceof Decision.Refused<UUID> taken) {
            form.reader().refuse("name", taken.reason().words(visitor.units()));
            Respond.again(ctx, TEMPLATE, new SettingsPage(form.reader(), empty()));
            return;
        }
        Decisions.doneOr(decision, visitor.units());
        Respond.seeOther(ctx, "/settings", SAY.settingsSaved());
    }

    private void changePassphrase(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        door.limitChange(visitor.memberId());
        FormReader form = new FormReader(ctx.formParamMap());
        String current = form.requiredText("current", SAY.passphraseNowField(), Passphrases.LONGEST);
        String next = PassphraseRule.read(form, "passphrase", SAY.newPassphraseField(), visitor.name());
        if (form.ok() && !passphrases.fits(current, members.passphraseHash(visitor.memberId()))) {
            form.refuse("current", SAY.passphraseWrong());
        }
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, new SettingsPage(OwnSettingsForm.of(me(ctx)), form));
            return;
        }
        String hash = passphrases.hash(next);
        browsers.letIn(ctx, admissions.changePassphrase(visitor.memberId(), hash));
        browsers.remember(ctx, Member.key(visitor.name()), hash);
        Respond.seeOther(ctx, "/settings", SAY.passphraseChanged());
    }

    private Member me(Context ctx) {
        return members.find(Visitor.of(ctx).memberId()).orElseThrow(Refusal::notFound);
    }

    private static FormReader empty() {
        return new FormReader(Map.of());
    }

    private record SettingsPage(
            FormReader form,
            FormReader passphraseForm,
            List<Choice> countries,
            List<Choice> temperatures,
            List<Choice> lengths) {
        private static final Choice AS_THE_GROUP = new Choice(OwnSettingsForm.AS_THE_GROUP, SAY.asTheGroup());
        private static final List<Choice> TEMPERATURES =
                List.of(AS_THE_GROUP, GroupChoices.CELSIUS, GroupChoices.FAHRENHEIT);
        private static final List<Choice> LENGTHS =
                List.of(AS_THE_GROUP, GroupChoices.CENTIMETRES, GroupChoices.INCHES);

        SettingsPage(FormReader form, FormReader passphraseForm) {
            this(form, passphraseForm, Countries.byName(), TEMPERATURES, LENGTHS);
        }
    }
}
