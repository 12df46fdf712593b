package warmshelf.operation;

import io.prometheus.metrics.core.metrics.GaugeWithCallback;
import io.prometheus.metrics.core.metrics.Histogram;
import io.prometheus.metrics.expositionformats.PrometheusTextFormatWriter;
import io.prometheus.metrics.model.registry.PrometheusRegistry;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.DoubleSupplier;

/** What was counted and measured since the start, and what is read anew each time somebody asks. */
final class RequestFigures {
    static final String TYPE = PrometheusTextFormatWriter.CONTENT_TYPE;
    private static final double NANOS = 1e9;
    /** In seconds: from a page that is felt as at once to one that nobody waits for. */
    private static final double[] STEPS = {0.01, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 10};

    private final PrometheusRegistry registry = new PrometheusRegistry();
    private final LongAdder requests = new LongAdder();
    private final LongAdder faults = new LongAdder();
    private final Histogram durations = Histogram.builder()
            .name("warmshelf_request_seconds")
            .help("How long requests took, by kind, route and class of status")
            .labelNames("method", "route", "status")
            .classicOnly()
            .withoutExemplars()
            .classicUpperBounds(STEPS)
            .register(registry);

    void answered(String method, String route, int status, Duration took) {
        requests.increment();
        if (status >= 500) {
            faults.increment();
        }
        durations.labelValues(method, route, status / 100 + "xx").observe(took.toNanos() / NANOS);
    }

    long requests() {
        return requests.sum();
    }

    /** Requests that were answered as a fault of ours, or that there was no room for. */
    long faults() {
        return faults.sum();
    }

    /** A figure that is read when somebody asks; NaN where it is not known. */
    void add(String name, String help, DoubleSupplier figure) {
        GaugeWithCallback.builder()
                .name("warmshelf_" + name)
                .help(help)
                .callback(callback -> callback.call(figure.getAsDouble()))
                .register(registry);
    }

    String text() {
        try {
            ByteArrayOutputStream text = new ByteArrayOutputStream();
            PrometheusTextFormatWriter.create().write(text, registry.scrape());
            return text.toString(StandardCharsets.UTF_8);
        } catch (IOException neverHappens) {
            throw new UncheckedIOException(neverHappens);
        }
    }
}
