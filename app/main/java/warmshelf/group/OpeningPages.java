package warmshelf.group;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.db.Database;
import warmshelf.member.Doorway;
import warmshelf.member.Link;
import warmshelf.member.LinkPurpose;
import warmshelf.member.LinkStore;
import warmshelf.member.MemberStore;
import warmshelf.member.NewMember;
import warmshelf.member.Passphrases;
import warmshelf.member.PersonForm;
import warmshelf.member.SessionStore;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;

/** Opening the group: the link printed at the first start lets one person name it and become its first coordinator. */
public final class OpeningPages implements Pages {
    private static final String TEMPLATE = "group/open.peb";
    // From July on a northern group looks to next spring, a southern one to this spring and the summer after it.
    private static final int MONTH_OF_LOOKING_AHEAD = 7;

    private final Database database;
    private final GroupStore group;
    private final MemberStore members;
    private final LinkStore links;
    private final SessionStore sessions;
    private final Passphrases passphrases;
    private final Doorway doorway;
    private final Clock clock;
    private final ZoneId offeredZone;

    public OpeningPages(
            Database database,
            GroupStore group,
            MemberStore members,
            LinkStore links,
            SessionStore sessions,
            Passphrases passphrases,
            Doorway doorway,
            Clock clock,
            ZoneId offeredZone) {
        this.database = database;
        this.group = group;
        this.members = members;
        this.links = links;
        this.sessions = sessions;
        this.passphrases = passphrases;
        this.doorway = doorway;
        this.clock = clock;
        this.offeredZone = offeredZone;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: the link's token is the right, and there are no members yet.
        routes.get("/open/{token}", this::ask, Role.ANYONE);
        routes.post("/open/{token}", this::open, Role.ANYONE);
    }

    private void ask(Context ctx) {
        openLink(ctx);
        LocalDate today = LocalDate.now(clock.withZone(offeredZone));
        int season = today.getYear() + (today.getMonthValue() >= MONTH_OF_LOOKING_AHEAD ? 1 : 0);
        ctx.render(
                TEMPLATE,
                model(new FormReader(Map.of(
                        "groupZone",
                        List.of(offeredZone.getId()),
                        "groupTemperature",
                        List.of("F"),
                        "groupLength",
                        List.of("in"),
                        GroupForm.COUNTRY,
                        List.of("US"),
                        "groupSeason",
                        List.of(String.valueOf(season))))));
    }

    private void open(Context ctx) {
        Link link = openLink(ctx);
        FormReader reader = new FormReader(ctx.formParamMap());
        GroupForm groupForm = GroupForm.from(reader);
        PersonForm personForm = PersonForm.from(reader, GroupForm.COUNTRY);
        if (!reader.ok()) {
            Respond.again(ctx, TEMPLATE, model(reader));
            return;
        }
        doorway.letIn(ctx, open(link, groupForm.profile(), personForm.person(passphrases)));
        Respond.seeOther(
                ctx,
                "/sites",
                "%s is open, and you are its first coordinator. Next, say where the racks stand."
                        .formatted(groupForm.profile().name()));
    }

    private String open(Link link, GroupProfile profile, NewMember person) {
        return database.sql().transactionResult(inside -> {
            // Using the link up locks its row, so of two people with it the second finds it spent.
            if (!links.use(inside.dsl(), link)) {
                throw Doorway.spent(link);
            }
            UUID id = members.add(inside.dsl(), person, true, "opened the group");
            group.open(inside.dsl(), profile, id);
            links.noteUser(inside.dsl(), link, id);
            return sessions.open(inside.dsl(), id);
        });
    }

    private Link openLink(Context ctx) {
        Link link = doorway.openLink(ctx, LinkPurpose.OPEN_GROUP);
        if (group.opened()) {
            throw Refusal.of(HttpStatus.GONE, "The group has been opened already. Sign in, or ask for an invitation.");
        }
        return link;
    }

    private static Map<String, Object> model(FormReader form) {
        Map<String, Object> model = new HashMap<>(GroupChoices.all());
        model.put("form", form);
        return model;
    }
}
