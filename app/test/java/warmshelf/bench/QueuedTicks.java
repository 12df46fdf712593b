package warmshelf.bench;

import java.net.http.HttpRequest;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** A phone that comes up from the cellar: how long it waits until all it kept is on the server's disk. */
final class QueuedTicks {
    private static final Pattern SOWING = Pattern.compile("id=\"s-([0-9a-f-]{36})\"");
    private static final int BATCHES = 5;

    private QueuedTicks() {}

    /** The median in milliseconds for one request with some looks at different sowings. */
    static double medianMillis(BenchProcess server, String session, int ticks) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", session);
        List<String> sowings = SOWING.matcher(browser.get("/today?show=all").body())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .limit(ticks)
                .toList();
        double[] waits = new double[BATCHES];
        for (int batch = 0; batch < BATCHES; batch++) {
            String now = Instant.now().toString();
            // a look that says nothing new would not be kept
            String note = "batch " + batch;
            String body = sowings.stream()
                    .map(sowing ->
                            "{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",\"seenAt\":\"%s\",\"pageAt\":\"%s\",\"note\":\"%s\"}"
                                    .formatted(UUID.randomUUID(), sowing, now, now, note))
                    .collect(Collectors.joining(",", "{\"sentAt\":\"" + now + "\",\"entries\":[", "]}"));
            long asked = System.nanoTime();
            Answer answer = browser.send(browser.request("/round/entries")
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(body)));
            waits[batch] = (System.nanoTime() - asked) / 1e6;
            int kept = answer.body().split("\"answer\":\"kept\"", -1).length - 1;
            if (kept < sowings.size() / 2) {
                throw new IllegalStateException("only %d of %d were kept".formatted(kept, sowings.size()));
            }
        }
        Arrays.sort(waits);
        return waits[BATCHES / 2];
    }
}
