package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class RequestsAtWorkTest {
    private final CountDownLatch slowWork = new CountDownLatch(1);
    private final CountDownLatch begun = new CountDownLatch(1);
    private final Server server = new Server();
    private final HttpClient client = HttpClient.newHttpClient();
    private ServerConnector connector;

    @BeforeEach
    void start() throws Exception {
        connector = new ServerConnector(server);
        connector.setHost("127.0.0.1");
        server.addConnector(connector);
        RequestsAtWork bound = new RequestsAtWork(1, 1, Duration.ofSeconds(30));
        bound.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) throws Exception {
                begun.countDown();
                slowWork.await(30, TimeUnit.SECONDS);
                Content.Sink.write(response, true, "done", callback);
                return true;
            }
        });
        server.setHandler(bound);
        server.start();
    }

    @AfterEach
    void stop() throws Exception {
        slowWork.countDown();
        server.stop();
    }

    @Test
    void beyond_what_may_work_and_wait_one_is_told_when_to_come_again() throws Exception {
        CompletableFuture<HttpResponse<String>> works = ask();
        assertThat(begun.await(30, TimeUnit.SECONDS)).isTrue();
        // one of these waits, the other is turned away
        CompletableFuture<HttpResponse<String>> second = ask();
        CompletableFuture<HttpResponse<String>> third = ask();

        HttpResponse<?> turnedAway =
                (HttpResponse<?>) CompletableFuture.anyOf(second, third).get(30, TimeUnit.SECONDS);
        slowWork.countDown();

        assertThat(turnedAway.statusCode()).isEqualTo(503);
        assertThat(turnedAway.headers().firstValue("Retry-After")).contains("5");
        assertThat(String.valueOf(turnedAway.body())).contains("Please try again in a few seconds");
        assertThat(works.get(30, TimeUnit.SECONDS).body()).isEqualTo("done");
        assertThat(second.get(30, TimeUnit.SECONDS).statusCode()
                        + third.get(30, TimeUnit.SECONDS).statusCode())
                .isEqualTo(200 + 503);
    }

    @Test
    void a_small_heap_bears_few_and_a_large_one_not_endlessly_many() {
        assertThat(RequestsAtWork.bearable(64_000_000)).isEqualTo(8);
        assertThat(RequestsAtWork.bearable(256_000_000)).isEqualTo(21);
        assertThat(RequestsAtWork.bearable(16_000_000_000L)).isEqualTo(64);
    }

    private CompletableFuture<HttpResponse<String>> ask() {
        URI address = URI.create("http://127.0.0.1:" + connector.getLocalPort() + "/");
        return client.sendAsync(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }
}
