package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The few answers that every feature's pages give. */
public final class Respond {
    private Respond() {}

    /** After a change: see the page that shows it, with a message that appears once. */
    public static void seeOther(Context ctx, String address, String notice) {
        Notice.leave(ctx, notice);
        ctx.redirect(address, HttpStatus.SEE_OTHER);
    }

    /** A page of words alone. */
    public static void page(Context ctx, String template) {
        ctx.render(template);
    }

    /** A page: a record with all that its template shows. */
    public static void page(Context ctx, String template, Record page) {
        ctx.render(template, PageModel.of(page));
    }

    /** A page to which other rooms add something. */
    public static void page(Context ctx, String template, Record page, Map<String, ?> aside) {
        Map<String, @Nullable Object> model = PageModel.of(page);
        model.putAll(aside);
        ctx.render(template, model);
    }

    /** The form once more, with what was typed and what is wrong with it. */
    public static void again(Context ctx, String template, Record page) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT).render(template, PageModel.of(page));
    }

    /** The same on a page to which other rooms add something. */
    public static void again(Context ctx, String template, Record page, Map<String, ?> aside) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        page(ctx, template, page, aside);
    }

    /** The form once more, with what was typed, because somebody changed meanwhile what it changes. */
    public static void overtaken(Context ctx, String template, Record page) {
        ctx.status(HttpStatus.CONFLICT);
        page(ctx, template, page);
    }

    /**
     * The page made, or 304 without one where whoever asks names the very page by the stamp that came with it. Only the worker
     * on a phone does, which keeps the page itself: to a browser every page stays 'no-store'.
     *
     * @param aside what other rooms add to the page
     * @param volatileWords what differs from one making of the page to the next and means no change
     */
    public static void unlessKept(
            Context ctx, String template, Record page, Map<String, ?> aside, String... volatileWords) {
        Map<String, @Nullable Object> model = PageModel.of(page);
        model.putAll(aside);
        Renderer.stampWithout(ctx, volatileWords);
        ctx.render(template, model);
        if (Renderer.stamp(ctx).equals(ctx.header("If-None-Match"))) {
            ctx.status(HttpStatus.NOT_MODIFIED).result("");
        }
    }

    /** The identifier in the address; an address that holds none leads nowhere. */
    public static UUID id(Context ctx, String parameter) {
        String text = ctx.pathParam(parameter);
        try {
            UUID id = UUID.fromString(text);
            // UUID.fromString also takes shortened forms, which would give one thing several addresses.
            if (id.toString().equalsIgnoreCase(text)) {
                return id;
            }
        } catch (IllegalArgumentException notAnId) {
            throw Refusal.notFound();
        }
        throw Refusal.notFound();
    }

    /** Whether a script asks, and so wants JSON rather than a page. */
    public static boolean wantsJson(Context ctx) {
        String accept = ctx.header("Accept");
        return ctx.header("X-Requested-With") != null || (accept != null && accept.contains("application/json"));
    }
}
