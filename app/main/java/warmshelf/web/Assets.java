package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Styles, scripts and pictures. Their address holds a hash of their content, so browsers may keep them for good. */
final class Assets {
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-zA-Z0-9_-]*(?:[./][a-zA-Z0-9_-]+)*");
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "ico", "image/x-icon",
            "woff2", "font/woff2",
            "webmanifest", "application/manifest+json",
            "json", "application/json",
            "txt", "text/plain; charset=utf-8");

    private static final Pattern IMPORT = Pattern.compile("@import url\\(\"([a-z-]+\\.css)\"\\);");

    private final Map<String, Asset> read = new ConcurrentHashMap<>();

    /** For example '/static/3f2a9c41b7d0/css/app.css'. A name without a file is a mistake in a template. */
    String address(String name) {
        return "/static/" + present(name).hash() + "/" + name;
    }

    /** A file as it is sent. */
    byte[] content(String name) {
        return present(name).content();
    }

    private Asset present(String name) {
        return find(name).orElseThrow(() -> new IllegalArgumentException("no file static/" + name));
    }

    void serve(Context ctx) {
        Asset asset = find(ctx.pathParam("file")).orElseThrow(NotFoundResponse::new);
        // A file named by another (a font by a style) comes under that one's hash: right, but not for ever.
        boolean exact = asset.hash().equals(ctx.pathParam("hash"));
        ctx.header("Cache-Control", exact ? "public, max-age=31536000, immutable" : "public, max-age=300");
        ctx.contentType(asset.type()).result(asset.content());
    }

    private Optional<Asset> find(String name) {
        Asset known = read.get(name);
        if (known != null) {
            return Optional.of(known);
        }
        int dot = name.lastIndexOf('.');
        String type = TYPES.get(name.substring(dot + 1));
        if (dot < 1
                || type == null
                || name.length() > 100
                || !NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        try (InputStream file = Assets.class.getResourceAsStream("/static/" + name)) {
            if (file == null) {
                return Optional.empty();
            }
            byte[] content = name.endsWith(".css") ? withImports(name, file) : file.readAllBytes();
            Asset asset = new Asset(content, type, hash(content));
            read.put(name, asset);
            return Optional.of(asset);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A sheet with those it imports put in their places, so that a page's styles are one file and one hash. */
    private byte[] withImports(String name, InputStream file) throws IOException {
        String folder = name.substring(0, name.lastIndexOf('/') + 1);
        String sheet = new String(file.readAllBytes(), StandardCharsets.UTF_8);
        return IMPORT.matcher(sheet)
                .replaceAll(found ->
                        Matcher.quoteReplacement(new String(content(folder + found.group(1)), StandardCharsets.UTF_8)))
                .getBytes(StandardCharsets.UTF_8);
    }

    /** A template's text, for those who must know whether it has changed. */
    static String template(String name) {
        try (InputStream file = Assets.class.getResourceAsStream("/templates/" + name)) {
            if (file == null) {
                throw new IllegalArgumentException("no file templates/" + name);
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static String hash(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().formatHex(digest, 0, 6);
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("every Java has SHA-256", absent);
        }
    }

    private static final class Asset {
        private final byte[] content;
        private final String type;
        private final String hash;

        Asset(byte[] content, String type, String hash) {
            this.content = content;
            this.type = type;
            this.hash = hash;
        }

        byte[] content() {
            return content;
        }

        String type() {
            return type;
        }

        String hash() {
            return hash;
        }
    }
}
