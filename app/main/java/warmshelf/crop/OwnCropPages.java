package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Message;

/** Where coordinators add crops and change what the reference says of them. */
public final class OwnCropPages implements Pages {
    private final CropCatalogue crops;
    private final OwnCropStore store;

    public OwnCropPages(CropCatalogue crops, OwnCropStore store) {
        this.crops = crops;
        this.store = store;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/new-crop", this::blank, Role.COORDINATOR);
        routes.post("/new-crop", this::add, Role.COORDINATOR);
        routes.get("/crops/{id}/change", this::showing, Role.COORDINATOR);
        routes.post("/crops/{id}/change", this::change, Role.COORDINATOR);
        routes.post("/crops/{id}/taking-back", this::takeBack, Role.COORDINATOR);
    }

    private void blank(Context ctx) {
        Respond.page(ctx, "crop/form.peb", page(ctx, CropForm.blank(), null));
    }

    private void add(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        CropForm form = CropForm.of(ctx.formParamMap(), "", crops, visitor.units());
        Optional<CropForm.Written> written = form.written();
        if (written.isEmpty()) {
            Respond.again(ctx, "crop/form.peb", page(ctx, form, null));
            return;
        }
        save(ctx, form, written.get(), null);
    }

    private void showing(Context ctx) {
        Crop crop = crop(ctx);
        Visitor visitor = Visitor.of(ctx);
        Optional<OwnCrop> written = crops.written(crop.id());
        CropForm form = written.filter(
                        own -> own.kept() || crops.reference(crop.id()).isEmpty())
                .map(own -> CropForm.showing(own, visitor.units()))
                .orElseGet(() ->
                        CropForm.showing(crop, written.map(OwnCrop::version).orElse(0), visitor.units()));
        Respond.page(ctx, "crop/form.peb", page(ctx, form, crop));
    }

    private void change(Context ctx) {
        Crop crop = crop(ctx);
        CropForm form = CropForm.of(
                ctx.formParamMap(), crop.id(), crops, Visitor.of(ctx).units());
        Optional<CropForm.Written> written = form.written();
        if (written.isEmpty()) {
            Respond.again(ctx, "crop/form.peb", page(ctx, form, crop));
            return;
        }
        save(ctx, form, written.get(), crop);
    }

    private void save(Context ctx, CropForm form, CropForm.Written written, @Nullable Crop crop) {
        String id = written.crop().id();
        Visitor visitor = Visitor.of(ctx);
        Optional<Message> overtaken = store.write(
                        written.crop(), written.emergence(), form.version(), visitor.memberId())
                .refusal();
        if (overtaken.isPresent()) {
            int version = crops.written(id).map(OwnCrop::version).orElse(0);
            CropForm again = form.overtaken(overtaken.get().words(visitor.units()), version);
            Respond.again(ctx, "crop/form.peb", page(ctx, again, crop));
            return;
        }
        Respond.seeOther(ctx, "/crops/" + id, SAY.cropSaved());
    }

    private void takeBack(Context ctx) {
        Crop crop = crop(ctx);
        OwnCrop own = crops.written(crop.id()).filter(OwnCrop::kept).orElseThrow(Refusal::notFound);
        Visitor visitor = Visitor.of(ctx);
        Decisions.doneOr(store.takeBack(own, version(ctx), visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx,
                "/crops/" + crop.id(),
                crops.reference(crop.id()).isPresent() ? SAY.takenBackToReference() : SAY.takenBack());
    }

    private Crop crop(Context ctx) {
        return crops.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    private static int version(Context ctx) {
        String typed = ctx.formParam("version");
        return typed != null && typed.matches("\\d{1,6}") ? Integer.parseInt(typed) : 0;
    }

    private CropFormPage page(Context ctx, CropForm form, @Nullable Crop crop) {
        boolean inReference = crop != null && crops.reference(crop.id()).isPresent();
        return CropFormPage.of(form, crop, inReference, Visitor.of(ctx).units());
    }
}
