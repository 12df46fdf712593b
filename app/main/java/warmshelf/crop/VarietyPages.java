package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Message;

/** Where coordinators write how soon a variety bears. */
public final class VarietyPages implements Pages {
    private final CropCatalogue crops;
    private final VarietyStore store;

    public VarietyPages(CropCatalogue crops, VarietyStore store) {
        this.crops = crops;
        this.store = store;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/crops/{id}/varieties", this::form, Role.COORDINATOR);
        routes.post("/crops/{id}/varieties", this::write, Role.COORDINATOR);
    }

    private void form(Context ctx) {
        Crop crop = crop(ctx);
        String name = ctx.queryParam("name");
        VarietyForm form = Optional.ofNullable(name)
                .flatMap(named -> crops.variety(crop.id(), named))
                .map(VarietyForm::showing)
                .orElseGet(() -> VarietyForm.blank(name == null ? "" : name));
        Respond.page(ctx, "crop/variety.peb", new VarietyFormPage(crop, form));
    }

    private void write(Context ctx) {
        Crop crop = crop(ctx);
        VarietyForm form = VarietyForm.of(ctx.formParamMap());
        Optional<VarietyForm.Written> written = form.written();
        if (written.isEmpty()) {
            Respond.again(ctx, "crop/variety.peb", new VarietyFormPage(crop, form));
            return;
        }
        VarietyForm.Written variety = written.get();
        Visitor visitor = Visitor.of(ctx);
        Optional<Message> overtaken = store.write(
                        crop.id(),
                        variety.name(),
                        variety.maturity(),
                        variety.source(),
                        variety.version(),
                        visitor.memberId())
                .refusal();
        if (overtaken.isPresent()) {
            int version = crops.variety(crop.id(), variety.name())
                    .map(Variety::version)
                    .orElse(0);
            Respond.again(
                    ctx,
                    "crop/variety.peb",
                    new VarietyFormPage(crop, form.overtaken(overtaken.get().words(visitor.units()), version)));
            return;
        }
        Respond.seeOther(ctx, "/crops/" + crop.id(), SAY.varietySaved(variety.name()));
    }

    private Crop crop(Context ctx) {
        return crops.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    /** @param bases from which day its days to maturity count */
    private record VarietyFormPage(Crop crop, VarietyForm form, List<Choice> bases) {
        VarietyFormPage(Crop crop, VarietyForm form) {
            this(crop, form, MaturityForm.BASES);
        }
    }
}
