package warmshelf.testing;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/** A form with files, as a browser sends it. */
public final class Upload {
    private static final String BOUNDARY = "----a-boundary-that-stands-in-no-file";

    private final Map<String, String> fields = new LinkedHashMap<>();
    private final List<Supplier<InputStream>> files = new ArrayList<>();
    private long size;

    public Upload field(String name, String value) {
        fields.put(name, value);
        return this;
    }

    public Upload file(String name, String text) {
        return file(name, text.getBytes(StandardCharsets.UTF_8));
    }

    public Upload file(String name, byte[] content) {
        return file(name, content.length, () -> new ByteArrayInputStream(content));
    }

    /** A file that is made while it is sent. */
    public Upload file(String name, long length, Supplier<InputStream> content) {
        byte[] head = text(
                "--%s\r\nContent-Disposition: form-data; name=\"file\"; filename=\"%s\"\r\nContent-Type: application/octet-stream\r\n\r\n"
                        .formatted(BOUNDARY, name));
        files.add(() -> joined(new ByteArrayInputStream(head), content.get(), new ByteArrayInputStream(text("\r\n"))));
        size += head.length + length + 2;
        return this;
    }

    /** Sends it with the token of the browser's session. */
    public Answer post(Browser browser, String path) {
        return postAsIs(browser, path, Map.of("csrf", Objects.requireNonNull(browser.token())), true);
    }

    /** Sends it without a token. */
    public Answer postWithoutToken(Browser browser, String path) {
        return postAsIs(browser, path, Map.of(), true);
    }

    /** Sends it in pieces, without saying how much will come. */
    public Answer postInPieces(Browser browser, String path) {
        return postAsIs(browser, path, Map.of("csrf", Objects.requireNonNull(browser.token())), false);
    }

    private Answer postAsIs(Browser browser, String path, Map<String, String> more, boolean lengthTold) {
        Map<String, String> all = new LinkedHashMap<>(more);
        all.putAll(fields);
        StringBuilder texts = new StringBuilder();
        all.forEach((name, value) -> texts.append(
                "--%s\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n".formatted(BOUNDARY, name, value)));
        byte[] head = text(texts.toString());
        byte[] end = text("--" + BOUNDARY + "--\r\n");
        HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofInputStream(() -> {
            List<InputStream> parts = new ArrayList<>(List.of(new ByteArrayInputStream(head)));
            files.forEach(file -> parts.add(file.get()));
            parts.add(new ByteArrayInputStream(end));
            return joined(parts.toArray(InputStream[]::new));
        });
        return browser.send(browser.request(path)
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .POST(
                        lengthTold
                                ? HttpRequest.BodyPublishers.fromPublisher(body, head.length + size + end.length)
                                : body));
    }

    private static InputStream joined(InputStream... parts) {
        return new SequenceInputStream(Collections.enumeration(List.of(parts)));
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
