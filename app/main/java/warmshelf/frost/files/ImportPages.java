package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SentFiles;
import warmshelf.web.Uploads;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;

/** Sending a file, seeing how far its reading is and what is in it, and deciding about it. */
final class ImportPages implements Pages {
    static final String ADDRESS = "/frost/imports";
    private static final int SECONDS_BETWEEN_LOOKS = 2;
    private static final int MOST_FILES = 200;

    private final ImportStore imports;
    private final StationStore stations;
    private final ImportJobs jobs;
    private final Clock clock;

    ImportPages(ImportStore imports, StationStore stations, ImportJobs jobs, Clock clock) {
        this.imports = imports;
        this.stations = stations;
        this.jobs = jobs;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(
                ADDRESS + "/new",
                ctx -> Respond.page(ctx, "frost/import-new.peb", new SendPage(ImportForm.blank())),
                Role.COORDINATOR);
        routes.post(ADDRESS, this::send, Role.COORDINATOR);
        routes.get(ADDRESS + "/{id}", this::show, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/cancellation", this::giveUp, Role.COORDINATOR);
        routes.post(ADDRESS + "/{id}/taking", this::take, Role.COORDINATOR);
        routes.post(ADDRESS + "/{id}/removal", this::remove, Role.COORDINATOR);
    }

    @Override
    public Set<String> uploads() {
        return Set.of(ADDRESS);
    }

    @Override
    public void stop() {
        jobs.close();
    }

    private record SendPage(ImportForm form, List<Choice> kinds) {
        SendPage(ImportForm form) {
            this(form, ImportForm.choices());
        }
    }

    /** @param seconds between two looks at how far the reading is */
    private record ShownImport(ImportPage page, int seconds) {}

    private void send(Context ctx) throws IOException {
        Path folder = Uploads.freshFolder(ctx);
        boolean handedOn = false;
        try {
            List<UploadedFile> files = keep(ctx, folder);
            ImportForm form =
                    ImportForm.of(ctx.formParamMap(), files, Visitor.of(ctx).units());
            if (form.kind().isEmpty()) {
                Respond.again(ctx, "frost/import-new.peb", new SendPage(form));
                return;
            }
            ImportReader.Order order = new ImportReader.Order(
                    form.kind().get(), files, form.place().orElse(null), form.stationName(), folder);
            UUID id = jobs.start(order, form.source(files), Visitor.of(ctx).memberId());
            handedOn = true;
            Respond.seeOther(ctx, ADDRESS + "/" + id, SAY.arrived());
        } finally {
            if (!handedOn) {
                ImportJobs.delete(folder);
            }
        }
    }

    private static List<UploadedFile> keep(Context ctx, Path folder) throws IOException {
        return SentFiles.keep(ctx, folder, MOST_FILES).stream()
                .map(sent -> new UploadedFile(sent.path(), sent.name()))
                .toList();
    }

    private void show(Context ctx) {
        FrostImport entry = found(ctx);
        ImportPage page = ImportPage.of(
                entry, jobs.waits(entry.id()), clock.instant(), Visitor.of(ctx).zone(), imports, stations);
        if (Respond.wantsJson(ctx)) {
            ctx.json(Map.of("busy", page.isBusy(), "percent", page.percent(), "words", page.progressWords()));
            return;
        }
        Respond.page(ctx, "frost/import.peb", new ShownImport(page, SECONDS_BETWEEN_LOOKS));
    }

    private FrostImport found(Context ctx) {
        return imports.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private void giveUp(Context ctx) {
        FrostImport entry = found(ctx);
        decided(imports.giveUp(entry.id(), Visitor.of(ctx).memberId()), entry);
        Respond.seeOther(ctx, "/frost/evidence", SAY.givenUp());
    }

    private void take(Context ctx) {
        FrostImport entry = found(ctx);
        decided(imports.take(entry.id(), Visitor.of(ctx).memberId()), entry);
        Respond.seeOther(ctx, "/frost/evidence", SAY.takenNow());
    }

    private void remove(Context ctx) {
        FrostImport entry = found(ctx);
        decided(imports.remove(entry.id(), Visitor.of(ctx).memberId()), entry);
        Respond.seeOther(ctx, "/frost/evidence", SAY.removedNow());
    }

    private void decided(boolean changed, FrostImport shown) {
        if (!changed) {
            FrostImport now = imports.find(shown.id()).orElse(shown);
            String by = now.decidedBy();
            String state = now.state().words();
            throw Refusal.conflict(by == null ? SAY.decidedMeanwhile(state) : SAY.decidedMeanwhileBy(state, by));
        }
    }
}
