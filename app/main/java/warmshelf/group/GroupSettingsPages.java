package warmshelf.group;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import warmshelf.web.FormReader;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** What is set for the whole group. */
public final class GroupSettingsPages implements Pages {
    private static final String TEMPLATE = "group/settings.peb";

    private final GroupStore group;

    public GroupSettingsPages(GroupStore group) {
        this.group = group;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/settings/group", this::show, Role.COORDINATOR);
        routes.post("/settings/group", this::change, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        GroupStore.Versioned stored = stored();
        ctx.render(TEMPLATE, model(new FormReader(GroupForm.typed(stored.profile())), stored.version(), List.of()));
    }

    private void change(Context ctx) {
        FormReader reader = new FormReader(ctx.formParamMap());
        GroupForm form = GroupForm.from(reader);
        int version = reader.wholeNumber("version", "Version", 1, Integer.MAX_VALUE);
        if (!reader.ok()) {
            Respond.again(ctx, TEMPLATE, model(reader, version, List.of()));
            return;
        }
        if (group.change(version, form.profile(), Visitor.of(ctx).memberId())) {
            Respond.seeOther(ctx, "/settings/group", "The group’s settings are saved.");
            return;
        }
        GroupStore.Versioned newer = stored();
        ctx.status(HttpStatus.CONFLICT)
                .render(TEMPLATE, model(reader, newer.version(), newer.profile().differences(form.profile())));
    }

    private GroupStore.Versioned stored() {
        return group.find().orElseThrow(Refusal::notFound);
    }

    private static Map<String, Object> model(FormReader form, int version, List<String> newer) {
        Map<String, Object> model = new HashMap<>(GroupChoices.all());
        model.put("form", form);
        model.put("version", version);
        model.put("newer", newer);
        return model;
    }
}
