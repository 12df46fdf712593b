package warmshelf.photo;

import static warmshelf.photo.PhotoSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Set;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.seed.Lot;
import warmshelf.seed.LotStore;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Adding pictures of packets to their lots, showing them and taking them out. */
public final class PacketPhotoPages implements Pages {
    private static final String ADDRESS = "/packets";

    private final PhotoStore photos;
    private final LotStore lots;

    public PacketPhotoPages(PhotoStore photos, LotStore lots) {
        this.photos = photos;
        this.lots = lots;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS + "/new", this::form, Role.MEMBER);
        routes.post(ADDRESS, this::add, Role.MEMBER);
        routes.get(ADDRESS + "/{id}", this::show, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/removal", this::remove, Role.MEMBER);
    }

    @Override
    public Set<String> uploads() {
        return Set.of(ADDRESS);
    }

    private void form(Context ctx) {
        FormReader form = new FormReader(ctx.queryParamMap());
        Respond.page(ctx, "photo/packet.peb", new FormPage(form, changeableLot(ctx, form)));
    }

    /** @param id under which the photo will be kept, so that it counts once */
    private record FormPage(FormReader form, Lot lot, UUID id) {
        FormPage(FormReader form, Lot lot) {
            this(form, lot, UUID.randomUUID());
        }
    }

    private Lot changeableLot(Context ctx, FormReader form) {
        Lot lot = SentFile.id(form, "lot").flatMap(lots::find).orElseThrow(Refusal::notFound);
        Visitor visitor = Visitor.of(ctx);
        if (!lot.mayBeChangedBy(visitor.memberId(), visitor.coordinator())) {
            throw Refusal.forbidden(SAY.mayNotAddToLot());
        }
        return lot;
    }

    private void add(Context ctx) throws IOException {
        FormReader form = new FormReader(ctx.formParamMap());
        Lot lot = changeableLot(ctx, form);
        UUID id = SentFile.id(form, "id").orElseGet(UUID::randomUUID);
        Visitor visitor = Visitor.of(ctx);
        Decision<PhotoStore.Keeping> decision = PhotoPages.sentWith(ctx)
                .then(picture -> photos.add(id, PhotoSubject.LOT, lot.id(), picture, visitor.memberId()));
        if (decision instanceof Decision.Refused) {
            form.refuse("file", Decisions.words(decision, visitor.units()));
            Respond.again(ctx, "photo/packet.peb", new FormPage(form, lot));
            return;
        }
        Decisions.doneOr(decision, visitor.units());
        Respond.seeOther(ctx, "/seeds/" + lot.id(), SAY.keptWithLot());
    }

    private void show(Context ctx) {
        PhotoPages.send(
                ctx, photos.jpeg(PhotoSubject.LOT, Respond.id(ctx, "id")).orElseThrow(Refusal::notFound));
    }

    private void remove(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Photo photo = photos.find(PhotoSubject.LOT, Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        Lot lot = lots.find(photo.of()).orElseThrow(Refusal::notFound);
        boolean mayRemove = lot.mayBeChangedBy(visitor.memberId(), visitor.coordinator())
                || photo.by().equals(visitor.memberId());
        if (!mayRemove) {
            throw Refusal.forbidden(SAY.mayNotTakeOutOfLot());
        }
        photos.remove(PhotoSubject.LOT, photo, visitor.memberId());
        Respond.seeOther(ctx, "/seeds/" + lot.id(), SAY.takenOut());
    }
}
