package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import warmshelf.decision.Decision;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.words.Choice;
import warmshelf.words.Countries;
import warmshelf.words.FormReader;
import warmshelf.words.LengthUnit;
import warmshelf.words.TemperatureUnit;

/** Opening the group: the link printed at the first start lets one person name it and become its first coordinator. */
public final class OpeningPages implements Pages {
    private static final String TEMPLATE = "group/open.peb";
    // Where the group is cannot be known yet. From July on a northern group looks to next spring; a southern one
    // changes the year.
    private static final int MONTH_OF_LOOKING_AHEAD = 7;

    private final OpeningStore openings;
    private final Passphrases passphrases;
    private final DoorPages door;
    private final BrowserSession browsers;
    private final Clock clock;
    private final ZoneId offeredZone;

    public OpeningPages(
            OpeningStore openings,
            Passphrases passphrases,
            DoorPages door,
            BrowserSession browsers,
            Clock clock,
            ZoneId offeredZone) {
        this.openings = openings;
        this.passphrases = passphrases;
        this.door = door;
        this.browsers = browsers;
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
        Respond.page(
                ctx,
                TEMPLATE,
                new OpeningPage(new FormReader(Map.of(
                        "groupZone",
                        List.of(offeredZone.getId()),
                        "groupTemperature",
                        List.of(TemperatureUnit.FAHRENHEIT.letter()),
                        "groupLength",
                        List.of(LengthUnit.INCHES.word()),
                        GroupForm.COUNTRY,
                        List.of("US"),
                        "groupSeason",
                        List.of(String.valueOf(season))))));
    }

    private void open(Context ctx) {
        Link link = openLink(ctx);
        FormReader reader = new FormReader(ctx.formParamMap());
        GroupForm groupForm = GroupForm.opening(reader);
        PersonForm personForm = PersonForm.from(reader, GroupForm.COUNTRY);
        if (!reader.ok()) {
            Respond.again(ctx, TEMPLATE, new OpeningPage(reader));
            return;
        }
        NewMember person = personForm.person(passphrases);
        Decision<String> decision = openings.open(link, groupForm.profile(), person);
        if (!(decision instanceof Decision.Done<String> in)) {
            throw alreadyOpened();
        }
        browsers.letIn(ctx, in.value());
        browsers.remember(ctx, Member.key(person.name()), person.passphraseHash());
        Respond.seeOther(ctx, "/sites", SAY.groupOpen(groupForm.profile().name()));
    }

    private Link openLink(Context ctx) {
        Link link = door.openLink(ctx, LinkPurpose.OPEN_GROUP);
        if (openings.opened()) {
            throw alreadyOpened();
        }
        return link;
    }

    private static Refusal alreadyOpened() {
        return Refusal.gone(SAY.openedAlready());
    }

    private record OpeningPage(
            FormReader form,
            List<String> zones,
            List<Choice> countries,
            List<Choice> temperatures,
            List<Choice> lengths) {
        OpeningPage(FormReader form) {
            this(form, GroupChoices.ZONES, Countries.byName(), GroupChoices.TEMPERATURES, GroupChoices.LENGTHS);
        }
    }
}
