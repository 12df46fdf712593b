package warmshelf.member;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Database;
import warmshelf.web.Countries;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;

/** Joining the group by a link. */
public final class JoinPages implements Pages {
    private final Database database;
    private final MemberStore members;
    private final LinkStore links;
    private final SessionStore sessions;
    private final Passphrases passphrases;
    private final Doorway doorway;

    public JoinPages(
            Database database,
            MemberStore members,
            LinkStore links,
            SessionStore sessions,
            Passphrases passphrases,
            Doorway doorway) {
        this.database = database;
        this.members = members;
        this.links = links;
        this.sessions = sessions;
        this.passphrases = passphrases;
        this.doorway = doorway;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: the link's token is the right.
        routes.get("/join/{token}", this::ask, Role.ANYONE);
        routes.post("/join/{token}", this::join, Role.ANYONE);
    }

    private void ask(Context ctx) {
        Link link = doorway.openLink(ctx, LinkPurpose.JOIN);
        String country = "US";
        ctx.render("member/join.peb", model(link, new FormReader(Map.of("country", List.of(country)))));
    }

    private void join(Context ctx) {
        Link link = doorway.openLink(ctx, LinkPurpose.JOIN);
        PersonForm form = PersonForm.from(ctx.formParamMap());
        if (form.ok() && members.isNameTaken(form.name())) {
            form.refuseTakenName();
        }
        if (!form.ok()) {
            Respond.again(ctx, "member/join.peb", model(link, form.reader()));
            return;
        }
        NewMember person = form.person(passphrases);
        try {
            doorway.letIn(ctx, welcome(link, person));
        } catch (IntegrityConstraintViolationException sameNameMeanwhile) {
            form.refuseTakenName();
            Respond.again(ctx, "member/join.peb", model(link, form.reader()));
            return;
        }
        Respond.seeOther(ctx, "/", "Welcome, %s. You are signed in.".formatted(person.name()));
    }

    private String welcome(Link link, NewMember person) {
        return database.sql().transactionResult(inside -> {
            if (!links.use(inside.dsl(), link)) {
                throw Doorway.spent(link);
            }
            UUID id = members.add(inside.dsl(), person, link.coordinator(), "by a link: " + link.note());
            links.noteUser(inside.dsl(), link, id);
            return sessions.open(inside.dsl(), id);
        });
    }

    private static Map<String, Object> model(Link link, FormReader form) {
        return Map.of("link", link, "form", form, "countries", Countries.byName());
    }
}
