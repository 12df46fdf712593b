package warmshelf.handbook;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.db.DescribedTable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Role;

/** The handbook. What a program says of itself, it says here from where it knows it: options, commands, tables. */
public final class HandbookPages implements Pages {
    private final Supplier<ProgramWords> program;

    public HandbookPages(Supplier<ProgramWords> program) {
        this.program = program;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(
                "/handbook",
                ctx -> ctx.render("handbook/list.peb", Map.of("chapters", Chapter.all())),
                Role.COORDINATOR);
        routes.get("/handbook/{chapter}", this::chapter, Role.COORDINATOR);
    }

    private void chapter(Context ctx) {
        Chapter chapter = Chapter.named(ctx.pathParam("chapter"))
                .orElseThrow(() -> Refusal.notFound(
                        "The handbook has no page of this name. All of them are in the Handbook, at /handbook."));
        Map<String, @Nullable Object> model = new HashMap<>();
        model.put("chapter", chapter);
        model.put("next", chapter.next().orElse(null));
        switch (chapter) {
            case OPTIONS -> model.put("settings", program.get().server());
            case COMMANDS -> model.put("program", program.get());
            case DATA -> model.put("tables", DescribedTable.all());
            default -> {
                // the others are words alone
            }
        }
        ctx.render(chapter.template(), model);
    }
}
