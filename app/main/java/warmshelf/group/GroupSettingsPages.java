package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import warmshelf.decision.Decision;
import warmshelf.web.Aside;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Countries;
import warmshelf.words.FormReader;

/** What is set for the whole group. */
public final class GroupSettingsPages implements Pages {
    private static final String TEMPLATE = "group/settings.peb";

    private final GroupStore group;
    private final Aside aside;

    public GroupSettingsPages(GroupStore group, Aside aside) {
        this.group = group;
        this.aside = aside;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/settings/group", this::show, Role.COORDINATOR);
        routes.post("/settings/group", this::change, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        GroupStore.Versioned stored = stored();
        FormReader form = new FormReader(GroupForm.typed(stored.profile()));
        Respond.page(ctx, TEMPLATE, new SettingsPage(form, stored.version(), List.of()), aside.model(Visitor.of(ctx)));
    }

    private void change(Context ctx) {
        FormReader reader = new FormReader(ctx.formParamMap());
        GroupForm form = GroupForm.changing(reader, stored().profile().season());
        int version = reader.wholeNumber("version", SAY.versionField(), 1, Integer.MAX_VALUE);
        if (!reader.ok()) {
            Respond.again(ctx, TEMPLATE, new SettingsPage(reader, version, List.of()), aside.model(Visitor.of(ctx)));
            return;
        }
        if (group.change(version, form.profile(), Visitor.of(ctx).memberId()) instanceof Decision.Done) {
            Respond.seeOther(ctx, "/settings/group", SAY.groupSaved());
            return;
        }
        GroupStore.Versioned newer = stored();
        ctx.status(HttpStatus.CONFLICT);
        Respond.page(
                ctx,
                TEMPLATE,
                new SettingsPage(reader, newer.version(), newer.profile().differences(form.profile())),
                aside.model(Visitor.of(ctx)));
    }

    private GroupStore.Versioned stored() {
        return group.find().orElseThrow(Refusal::notFound);
    }

    /**
     * The group's settings.
     *
     * @param version what is saved over
     * @param newer what somebody else changed meanwhile
     */
    private record SettingsPage(
            FormReader form,
            int version,
            List<String> newer,
            List<String> zones,
            List<Choice> countries,
            List<Choice> temperatures,
            List<Choice> lengths) {
        SettingsPage(FormReader form, int version, List<String> newer) {
            this(
                    form,
                    version,
                    newer,
                    GroupChoices.ZONES,
                    Countries.byName(),
                    GroupChoices.TEMPERATURES,
                    GroupChoices.LENGTHS);
        }
    }
}
