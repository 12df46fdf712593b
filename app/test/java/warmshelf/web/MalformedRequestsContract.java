package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.testing.Browser;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/**
 * Requests that no browser makes, to every address there is, drawn at random from a fixed seed and written to the socket as they
 * are: wrong ids, odd characters, lengths that lie, forms cut off. Whatever is wrong with them is not a fault of ours.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class MalformedRequestsContract {
    private static final int REQUESTS = 5_000;
    /** After so many a browser signs in anew, since some of the requests sign out. */
    private static final int OF_ONE_SESSION = 50;

    private static final List<String> NONSENSE = List.of(
            "",
            "x",
            "-1",
            "0",
            "99999999999999999999",
            "%00",
            "a%00b",
            "%F0%9F%8C%B6",
            "%FF%FE",
            "%2e%2e%2f",
            "%27%22%3C",
            "2027-02-30",
            "NaN",
            "1e309",
            "a".repeat(3_000),
            "00000000-0000-0000-0000-000000000000",
            "null");
    private static final List<String> NAMES = List.of(
            "q", "show", "week", "season", "from", "to", "crop", "site", "by", "then", "version", "step", "name",
            "note", "day", "date", "count", "page", "celsius", "csrf", "id", "file", "amount", "lot");
    private static final List<String> TYPES = List.of(
            "application/x-www-form-urlencoded",
            "application/x-www-form-urlencoded; charset=nonsense",
            "application/json",
            "multipart/form-data; boundary=x",
            "multipart/form-data",
            "text/plain",
            "");

    private TestGroup group;

    abstract TestDatabase place();

    @BeforeAll
    final void open() {
        group = TestGroup.open(place());
    }

    @AfterAll
    final void close() {
        if (group != null) {
            group.close();
        }
    }

    @Test
    void nothing_malformed_is_answered_as_a_fault_of_ours() throws IOException {
        Random random = new Random(20270301);
        List<RouteRight> routes = group.server().rights();
        List<String> faults = new ArrayList<>();
        List<Browser> browsers = List.of();
        int answered = 0;
        for (int i = 0; i < REQUESTS; i++) {
            if (i % OF_ONE_SESSION == 0) {
                browsers =
                        List.of(group.signedIn(group.coordinator()), group.signedIn(group.member()), group.stranger());
            }
            Browser browser = browsers.get(random.nextInt(browsers.size()));
            String request = request(routes.get(random.nextInt(routes.size())), browser, random);
            String status = firstLine(request);
            answered += status.isEmpty() ? 0 : 1;
            if (status.contains(" 5")) {
                faults.add(status + " to " + request.substring(0, Math.min(300, request.length())));
            }
        }
        assertThat(faults).isEmpty();
        assertThat(answered).isGreaterThan(REQUESTS * 9 / 10);
    }

    private String request(RouteRight route, Browser browser, Random random) {
        StringBuilder path = new StringBuilder();
        for (String part : route.path().split("/", -1)) {
            if (!part.isEmpty()) {
                path.append('/').append(part.startsWith("{") || part.startsWith("<") ? some(NONSENSE, random) : part);
            }
        }
        if (random.nextInt(3) == 0) {
            path.append('?').append(fields(random));
        }
        boolean posts = route.method().equals("POST");
        String body = posts ? body(browser, random) : "";
        int length = random.nextInt(20) == 0 ? random.nextInt(3 * body.length() + 1) : body.length();
        return route.method() + ' ' + (path.length() == 0 ? "/" : path)
                + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + (browser.cookie("warmshelf") == null
                        ? ""
                        : "Cookie: warmshelf=" + browser.cookie("warmshelf") + "\r\n")
                + (posts ? "Content-Type: " + some(TYPES, random) + "\r\nContent-Length: " + length + "\r\n" : "")
                + (random.nextInt(4) == 0 ? "Accept: application/json\r\n" : "")
                + "\r\n"
                + body;
    }

    private static String body(Browser browser, Random random) {
        String fields = "csrf=" + browser.token() + "&" + fields(random);
        return switch (random.nextInt(4)) {
            case 0 -> fields;
            case 1 -> "{\"entries\":[{\"" + some(NAMES, random) + "\":\"" + some(NONSENSE, random) + "\"}]}";
            case 2 ->
                "--x\r\nContent-Disposition: form-data; name=\"" + some(NAMES, random) + "\"; filename=\"a\"\r\n\r\n"
                        + some(NONSENSE, random);
            default -> fields + "&%ZZ=%&&=";
        };
    }

    private static String fields(Random random) {
        StringBuilder fields = new StringBuilder();
        for (int i = random.nextInt(4); i >= 0; i--) {
            fields.append(some(NAMES, random))
                    .append('=')
                    .append(some(NONSENSE, random))
                    .append('&');
        }
        return fields.toString();
    }

    private static String some(List<String> these, Random random) {
        return these.get(random.nextInt(these.size()));
    }

    /** Empty where the server hung up, as it may when more was announced than came. */
    private String firstLine(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), group.port())) {
            socket.setSoTimeout(30_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.shutdownOutput();
            InputStream answer = socket.getInputStream();
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            for (int c = answer.read(); c >= 0 && c != '\r'; c = answer.read()) {
                line.write(c);
            }
            return line.toString(StandardCharsets.ISO_8859_1);
        } catch (SocketException hungUp) {
            return "";
        }
    }
}
