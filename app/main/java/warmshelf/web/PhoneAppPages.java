package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What makes a phone keep Today for a cellar without signal: the manifest by which it is put on the home screen, the worker
 * that keeps the page, and the small page shown where there is neither signal nor anything kept.
 */
final class PhoneAppPages implements Pages {
    private static final List<String> SHELL = List.of(
            "css/app.css",
            "js/page.js",
            "js/round/kept.js",
            "js/round/send.js",
            "js/round/rest.js",
            "js/round/show.js",
            "js/round/walk.js",
            "js/round/photo.js",
            "js/round/who.js",
            "js/round/start.js",
            "icons/warmshelf.svg",
            "icons/warmshelf-192.png");
    private static final List<String> TEMPLATES = List.of("web/offline.peb", "layout/page.peb");

    private final Assets assets;

    PhoneAppPages(Assets assets) {
        this.assets = assets;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: nothing in them is the group's own, and a phone asks for them without saying who it is.
        routes.get("/manifest.webmanifest", this::manifest, Role.ANYONE);
        routes.get("/worker.js", this::worker, Role.ANYONE);
        routes.get("/offline", ctx -> Respond.page(ctx, "web/offline.peb"), Role.ANYONE);
    }

    private void manifest(Context ctx) {
        Map<String, Object> manifest = new LinkedHashMap<>();
        manifest.put("name", "Warmshelf");
        manifest.put("short_name", "Warmshelf");
        manifest.put("description", SAY.phoneApp());
        manifest.put("id", "/");
        manifest.put("start_url", "/today");
        manifest.put("scope", "/");
        manifest.put("display", "standalone");
        manifest.put("background_color", "#f8f4ea");
        manifest.put("theme_color", "#f8f4ea");
        manifest.put(
                "icons",
                List.of(
                        icon("icons/warmshelf-app.svg", "any", "image/svg+xml", "any"),
                        icon("icons/warmshelf-192.png", "192x192", "image/png", "any"),
                        icon("icons/warmshelf-512.png", "512x512", "image/png", "any"),
                        icon("icons/warmshelf-maskable-512.png", "512x512", "image/png", "maskable")));
        ctx.json(manifest);
        ctx.contentType("application/manifest+json");
        ctx.header("Cache-Control", "no-cache");
    }

    private Map<String, String> icon(String name, String sizes, String type, String purpose) {
        return Map.of("src", assets.address(name), "sizes", sizes, "type", type, "purpose", purpose);
    }

    /** The worker with what it keeps and a version that changes whenever any of that does. */
    private void worker(Context ctx) {
        String shell =
                SHELL.stream().map(name -> '"' + assets.address(name) + '"').collect(Collectors.joining(",", "[", "]"));
        String script = new String(assets.content("js/worker.js"), StandardCharsets.UTF_8);
        String version = Assets.hash((shell + script + templates()).getBytes(StandardCharsets.UTF_8));
        ctx.contentType("text/javascript; charset=utf-8");
        ctx.header("Cache-Control", "no-cache");
        ctx.result("const VERSION = \"%s\";\nconst SHELL = %s;\n%s".formatted(version, shell, script));
    }

    private static String templates() {
        return TEMPLATES.stream().map(Assets::template).collect(Collectors.joining());
    }
}
