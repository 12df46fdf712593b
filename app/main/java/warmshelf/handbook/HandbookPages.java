package warmshelf.handbook;

import static warmshelf.handbook.HandbookSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Supplier;
import warmshelf.db.DescribedTable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;

/** The handbook. What the program says of itself, it says here from where it knows it: options, commands, tables. */
public final class HandbookPages implements Pages {
    private final Supplier<ProgramWords> program;

    public HandbookPages(Supplier<ProgramWords> program) {
        this.program = program;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/handbook", this::contents, Role.COORDINATOR);
        routes.get("/handbook/{chapter}", this::chapter, Role.COORDINATOR);
    }

    private void contents(Context ctx) {
        Respond.page(ctx, "handbook/list.peb", new HandbookPage.Contents(Chapter.all()));
    }

    private void chapter(Context ctx) {
        Chapter chapter =
                Chapter.named(ctx.pathParam("chapter")).orElseThrow(() -> Refusal.notFound(SAY.noSuchChapter()));
        if (chapter == Chapter.SECURITY) {
            Respond.page(ctx, chapter.template(), SecurityPage.of(chapter));
            return;
        }
        HandbookPage page = new HandbookPage(chapter, chapter.next().orElse(null), program.get(), DescribedTable.all());
        Respond.page(ctx, chapter.template(), page);
    }
}
