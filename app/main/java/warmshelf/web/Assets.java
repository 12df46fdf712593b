package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
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

    private final Map<String, Asset> read = new ConcurrentHashMap<>();

    /** For example '/static/3f2a9c41b7d0/css/app.css'. A name without a file is a mistake in a template. */
    String address(String name) {
        Asset asset = find(name).orElseThrow(() -> new IllegalArgumentException("no file static/" + name));
        return "/static/" + asset.hash() + "/" + name;
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
            byte[] content = file.readAllBytes();
            Asset asset = new Asset(content, type, hash(content));
            read.put(name, asset);
            return Optional.of(asset);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String hash(byte[] content) {
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
