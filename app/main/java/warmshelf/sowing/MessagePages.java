package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Writing to the grower of a sowing, or to a coordinator about it. */
final class MessagePages implements Pages {
    private final SowingStore sowings;
    private final MessageStore messages;

    MessagePages(SowingStore sowings, MessageStore messages) {
        this.sowings = sowings;
        this.messages = messages;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/sowings/{id}/message", this::ask, Role.MEMBER);
        routes.post("/sowings/{id}/message", this::write, Role.MEMBER);
    }

    /** What the page shows. */
    private record MessagePage(FormReader form, Sowing sowing, List<Option> readers) {}

    /** Somebody to write to, as the form offers them. */
    public record Option(String value, String words) {}

    private void ask(Context ctx) {
        Sowing sowing = sowing(ctx);
        List<MessageStore.Reader> readers = readers(ctx, sowing);
        FormReader form =
                new FormReader(Map.of("to", List.of(readers.get(0).id().toString())));
        Respond.page(ctx, "sowing/message.peb", page(form, sowing, readers));
    }

    private void write(Context ctx) {
        Sowing sowing = sowing(ctx);
        List<MessageStore.Reader> readers = readers(ctx, sowing);
        FormReader form = new FormReader(ctx.formParamMap());
        Optional<MessageForm.Written> written = MessageForm.read(form, readers);
        if (written.isEmpty()) {
            Respond.again(ctx, "sowing/message.peb", page(form, sowing, readers));
            return;
        }
        UUID to = written.get().to();
        messages.write(sowing.id(), to, written.get().words(), Visitor.of(ctx).memberId());
        String name = readers.stream()
                .filter(reader -> reader.id().equals(to))
                .map(MessageStore.Reader::name)
                .findFirst()
                .orElseThrow();
        Respond.seeOther(ctx, "/sowings/" + sowing.id(), SAY.messageWritten(name));
    }

    private static MessagePage page(FormReader form, Sowing sowing, List<MessageStore.Reader> readers) {
        return new MessagePage(
                form,
                sowing,
                readers.stream()
                        .map(reader -> new Option(
                                reader.id().toString(),
                                reader.grower() ? SAY.asGrower(reader.name()) : SAY.asCoordinator(reader.name())))
                        .toList());
    }

    private Sowing sowing(Context ctx) {
        return sowings.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
    }

    private List<MessageStore.Reader> readers(Context ctx, Sowing sowing) {
        List<MessageStore.Reader> readers =
                messages.readers(sowing, Visitor.of(ctx).memberId());
        if (readers.isEmpty()) {
            throw Refusal.conflict(SAY.nobodyToWriteTo());
        }
        return readers;
    }
}
