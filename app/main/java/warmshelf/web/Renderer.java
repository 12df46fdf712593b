package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.rendering.FileRenderer;
import io.pebbletemplates.pebble.PebbleEngine;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.SectionLoader;
import warmshelf.words.Units;

/** Turns a template and its model into a page, adding what every page shows: who, which group, which day. */
final class Renderer implements FileRenderer {
    private static final String WITHOUT_RECORDS = "warmshelf.without-records";
    private static final String STAMP_WITHOUT = "warmshelf.stamp-without";

    private final PebbleEngine engine;
    private final Doors doors;
    private final Clock clock;
    private final ZoneId zoneBeforeOpening;
    private final List<Pages> pages;

    Renderer(Assets assets, Doors doors, Clock clock, ZoneId zoneBeforeOpening, List<Pages> pages) {
        this.engine = engine(assets);
        this.doors = doors;
        this.clock = clock;
        this.zoneBeforeOpening = zoneBeforeOpening;
        this.pages = List.copyOf(pages);
    }

    /** Has this request's page made without asking the database, which may be what broke. */
    static void withoutRecords(Context ctx) {
        ctx.attribute(WITHOUT_RECORDS, true);
    }

    /** Has this request's page stamped: by everything on it but some words. */
    static void stampWithout(Context ctx, String... volatileWords) {
        ctx.attribute(STAMP_WITHOUT, volatileWords);
    }

    /** The stamp that the page went out with. */
    static String stamp(Context ctx) {
        return String.valueOf(ctx.res().getHeader("ETag"));
    }

    static PebbleEngine engine(Assets assets) {
        return new PebbleEngine.Builder()
                .loader(new SectionLoader())
                .strictVariables(true)
                .extension(new TemplateWords(assets))
                .build();
    }

    @Override
    public String render(String template, Map<String, ?> model, Context ctx) {
        Map<String, @Nullable Object> all = frame(ctx);
        all.putAll(model);
        StringWriter page = new StringWriter();
        try {
            engine.getTemplate(template).evaluate(page, all);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        String text = page.toString();
        String[] volatileWords = ctx.attribute(STAMP_WITHOUT);
        if (volatileWords != null) {
            ctx.header("ETag", stampOf(text, volatileWords));
        }
        return text;
    }

    /** The length and a sum of each half: pages of one address, made one after the other, are told apart, and nobody forges them. */
    private static String stampOf(String text, String... volatileWords) {
        String lasting = text;
        for (String words : volatileWords) {
            lasting = lasting.replace(words, "");
        }
        int half = lasting.length() / 2;
        return '"'
                + Integer.toHexString(lasting.length())
                + '-'
                + Integer.toHexString(lasting.substring(0, half).hashCode())
                + '-'
                + Integer.toHexString(lasting.substring(half).hashCode())
                + '"';
    }

    private Map<String, @Nullable Object> frame(Context ctx) {
        Map<String, @Nullable Object> frame = new HashMap<>();
        Optional<Visitor> visitor = Visitor.maybe(ctx);
        Units units = visitor.map(Visitor::units).orElse(Units.METRIC);
        pages.forEach(each -> frame.putAll(each.forTemplates(units)));
        frame.put("visitor", visitor.orElse(null));
        frame.put("csrf", visitor.map(Visitor::csrfToken).orElse(""));
        frame.put("path", ctx.path());
        frame.put("programPart", PartOfProgram.of(ctx.path()).name());
        boolean asks = visitor.isPresent() && visitor.get().tablet() == null && ctx.attribute(WITHOUT_RECORDS) == null;
        frame.put(
                "newsCount",
                asks
                        ? pages.stream()
                                .mapToInt(each -> each.newFor(visitor.get()))
                                .sum()
                        : 0);
        frame.put(
                "decideCount",
                asks && visitor.get().reach().coordinates()
                        ? pages.stream()
                                .mapToInt(each -> each.toDecide(visitor.get()))
                                .sum()
                        : 0);
        frame.put("notice", Notice.take(ctx));
        frame.put("undo", Notice.takeUndo(ctx));
        if (visitor.isPresent()) {
            frame.put("groupName", visitor.get().groupName());
            frame.put("today", visitor.get().today());
        } else {
            Optional<GroupFace> group = ctx.attribute(WITHOUT_RECORDS) == null ? doors.group() : Optional.empty();
            frame.put("groupName", group.map(GroupFace::name).orElse("Warmshelf"));
            frame.put(
                    "today",
                    LocalDate.now(clock.withZone(group.map(GroupFace::zone).orElse(zoneBeforeOpening))));
        }
        frame.put("pretence", PretendedClock.words(clock, (LocalDate) frame.get("today")));
        return frame;
    }
}
