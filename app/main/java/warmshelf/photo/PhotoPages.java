package warmshelf.photo;

import static warmshelf.photo.PhotoSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import warmshelf.decision.Decision;
import warmshelf.tablet.TabletReachPages;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Adding pictures, from a page or from a phone's store, showing them and taking them out. */
public final class PhotoPages implements Pages {
    private static final String ADDRESS = "/photos";
    private static final String FROM_PHONE = "/round/photos";
    private static final int MOST_SENT = 20_000_000;

    private final PhotoStore photos;
    private final TabletReachPages reach;

    public PhotoPages(PhotoStore photos, TabletReachPages reach) {
        this.photos = photos;
        this.reach = reach;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS + "/new", this::form, Role.MEMBER);
        routes.post(ADDRESS, this::add, Role.MEMBER);
        routes.get(ADDRESS + "/{id}", this::show, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/removal", this::remove, Role.MEMBER);
        routes.post(FROM_PHONE, this::take, Role.TABLET);
    }

    @Override
    public Set<String> uploads() {
        return Set.of(ADDRESS);
    }

    @Override
    public Set<String> forScripts() {
        return Set.of(FROM_PHONE);
    }

    private void form(Context ctx) {
        PhotoStore.About about = about(String.valueOf(ctx.queryParam("entry")));
        Respond.page(ctx, "photo/new.peb", new FormPage(new FormReader(ctx.queryParamMap()), about));
    }

    /** @param id under which the photo will be kept, so that it counts once */
    private record FormPage(FormReader form, PhotoStore.About about, UUID id) {
        FormPage(FormReader form, PhotoStore.About about) {
            this(form, about, UUID.randomUUID());
        }
    }

    private PhotoStore.About about(String entry) {
        return SentFile.id(entry).flatMap(photos::entry).orElseThrow(Refusal::notFound);
    }

    private void add(Context ctx) throws IOException {
        FormReader form = new FormReader(ctx.formParamMap());
        PhotoStore.About about = about(form.text("entry"));
        UUID id = SentFile.id(form, "id").orElseGet(UUID::randomUUID);
        Visitor visitor = Visitor.of(ctx);
        Decision<PhotoStore.Keeping> decision = sentWith(ctx)
                .then(picture -> photos.add(id, PhotoSubject.ENTRY, about.entry(), picture, visitor.memberId()));
        if (decision instanceof Decision.Refused) {
            form.refuse("file", Decisions.words(decision, visitor.units()));
            Respond.again(ctx, "photo/new.peb", new FormPage(form, about));
            return;
        }
        Decisions.doneOr(decision, visitor.units());
        Respond.seeOther(ctx, "/sowings/" + about.sowing(), SAY.keptWithEntry());
    }

    /** The picture in the field 'file' of a form; a no where there is none, or it cannot be taken. */
    static Decision<Picture> sentWith(Context ctx) throws IOException {
        UploadedFile sent = ctx.uploadedFile("file");
        if (sent == null || sent.filename().isBlank()) {
            return new Decision.Refused<>(new PhotoRefusal.NoneSent());
        }
        if (sent.size() > MOST_SENT) {
            return new Decision.Refused<>(new PhotoRefusal.TooLarge(sent.size(), MOST_SENT));
        }
        try (InputStream content = sent.content()) {
            return Shrink.picture(content.readAllBytes());
        }
    }

    /** A picture that waited on a phone: 200 when it is kept, 422 with a sentence when it never can be. */
    private void take(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        SentPhoto sent =
                SentPhoto.read(ctx.body()).orElseThrow(() -> Refusal.of(HttpStatus.BAD_REQUEST, SAY.notAPhoto()));
        if (!sent.member().isEmpty() && !sent.member().equals(visitor.memberId().toString())) {
            ctx.status(HttpStatus.CONFLICT).json(Map.of("otherMember", true));
            return;
        }
        if (photos.entry(sent.entry())
                .filter(about -> !reach.of(visitor).hasSowing(about.sowing()))
                .isPresent()) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.noSuchEntry());
        }
        Decision<PhotoStore.Keeping> decision = Shrink.picture(sent.file())
                .then(picture -> photos.add(sent.id(), PhotoSubject.ENTRY, sent.entry(), picture, visitor.memberId()));
        if (!(decision instanceof Decision.Done)) {
            String why = decision.refusal().map(no -> no.words(visitor.units())).orElse(SAY.noSuchEntry());
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, why);
        }
        ctx.json(Map.of("kept", true));
    }

    private void show(Context ctx) {
        send(ctx, photos.jpeg(PhotoSubject.ENTRY, Respond.id(ctx, "id")).orElseThrow(Refusal::notFound));
    }

    static void send(Context ctx, byte[] jpeg) {
        // An hour, so that one that was taken out is gone soon; it never changes.
        ctx.header("Cache-Control", "private, max-age=3600, immutable");
        ctx.contentType("image/jpeg").result(jpeg);
    }

    private void remove(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Photo photo = photos.find(PhotoSubject.ENTRY, Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        PhotoStore.About about = photos.entry(photo.of()).orElseThrow(Refusal::notFound);
        if (!mayRemove(visitor, photo, about.grower())) {
            throw Refusal.forbidden(SAY.mayNotTakeOut());
        }
        photos.remove(PhotoSubject.ENTRY, photo, visitor.memberId());
        Respond.seeOther(ctx, "/sowings/" + about.sowing(), SAY.takenOut());
    }

    private static boolean mayRemove(Visitor visitor, Photo photo, UUID grower) {
        return visitor.coordinator() || photo.by().equals(visitor.memberId()) || grower.equals(visitor.memberId());
    }
}
