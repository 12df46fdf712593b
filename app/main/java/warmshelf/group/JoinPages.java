package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import warmshelf.decision.Decision;
import warmshelf.web.BrowserSession;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.words.Choice;
import warmshelf.words.Countries;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Joining the group by a link. */
public final class JoinPages implements Pages {
    private static final String TEMPLATE = "group/join.peb";

    private final AdmissionStore admissions;
    private final Passphrases passphrases;
    private final DoorPages door;
    private final BrowserSession browsers;

    public JoinPages(AdmissionStore admissions, Passphrases passphrases, DoorPages door, BrowserSession browsers) {
        this.admissions = admissions;
        this.passphrases = passphrases;
        this.door = door;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: the link's token is the right.
        routes.get("/join/{token}", this::ask, Role.ANYONE);
        routes.post("/join/{token}", this::join, Role.ANYONE);
    }

    private void ask(Context ctx) {
        Link link = openLink(ctx);
        // whom it was made for is most often who opens it; anybody else types another name
        String name = link.note().length() <= PersonForm.LONGEST_NAME ? link.note() : "";
        FormReader form = new FormReader(Map.of("country", List.of("US"), "name", List.of(name)));
        Respond.page(ctx, TEMPLATE, new JoinPage(link, form));
    }

    private void join(Context ctx) {
        Link link = openLink(ctx);
        PersonForm form = PersonForm.from(ctx.formParamMap());
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, new JoinPage(link, form.reader()));
            return;
        }
        NewMember person = form.person(passphrases);
        Decision<String> decision = admissions.join(link, person);
        if (decision instanceof Decision.Refused<String> taken) {
            form.reader().refuse("name", taken.reason().words(Units.METRIC));
            Respond.again(ctx, TEMPLATE, new JoinPage(link, form.reader()));
            return;
        }
        browsers.letIn(ctx, Decisions.doneOr(decision, Units.METRIC));
        browsers.remember(ctx, Member.key(person.name()), person.passphraseHash());
        Respond.seeOther(ctx, "/", SAY.welcome(form.name()));
    }

    private Link openLink(Context ctx) {
        return door.openLink(ctx, LinkPurpose.JOIN);
    }

    private record JoinPage(Link link, FormReader form, List<Choice> countries) {
        JoinPage(Link link, FormReader form) {
            this(link, form, Countries.byName());
        }
    }
}
