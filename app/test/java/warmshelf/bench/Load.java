package warmshelf.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/** Asks this machine's own server for one page again and again, bounded in time and in number. */
final class Load {
    private static final int CONNECTIONS = 8;
    private static final int MOST_REQUESTS = 2_000_000;

    private final int port;

    Load(int port) {
        this.port = port;
    }

    /**
     * What a load came to.
     *
     * @param perSecond answers a second
     * @param perCpuSecond answers a second of the server's own processor time, which the asking does not share
     */
    record Rate(double perSecond, double perCpuSecond) {}

    /** Asks over eight connections that are kept open. Any answer but 200 ends the run with an error. */
    Rate run(Ask ask, Duration time, BenchProcess server) throws IOException, InterruptedException {
        AtomicInteger answers = new AtomicInteger();
        long end = System.nanoTime() + time.toNanos();
        ExecutorService clients = Executors.newFixedThreadPool(CONNECTIONS);
        Duration cpuBefore = server.processorTime();
        long start = System.nanoTime();
        List<Future<Integer>> running = new ArrayList<>();
        for (int client = 0; client < CONNECTIONS; client++) {
            running.add(clients.submit(client(ask, end, answers)));
        }
        try {
            for (Future<Integer> each : running) {
                each.get();
            }
        } catch (ExecutionException failed) {
            throw new IOException("the load on " + ask.path() + " failed", failed.getCause());
        } finally {
            clients.shutdownNow();
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        double cpu = server.processorTime().minus(cpuBefore).toNanos() / 1e9;
        return new Rate(answers.get() / seconds, answers.get() / cpu);
    }

    private Callable<Integer> client(Ask ask, long end, AtomicInteger answers) {
        return () -> {
            int own = 0;
            try (Wire wire = new Wire(port)) {
                while (System.nanoTime() < end && answers.get() < MOST_REQUESTS) {
                    Wire.Reply reply = wire.get(ask);
                    if (reply.status() != 200) {
                        throw new IOException("status " + reply.status() + " at " + ask.path());
                    }
                    answers.incrementAndGet();
                    own++;
                }
            }
            return own;
        };
    }

    /**
     * One page and who asks for it.
     *
     * @param session the session's token, or empty
     * @param packed whether a packed answer is accepted, as browsers do
     * @param kept the stamp of the page that is kept already; empty where none is
     */
    record Ask(String path, String session, boolean packed, String kept) {
        Ask(String path, String session, boolean packed) {
            this(path, session, packed, "");
        }
    }
}
