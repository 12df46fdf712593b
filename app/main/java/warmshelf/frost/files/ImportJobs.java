package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.BadInput;

/** Reads imports in the background, one at a time; the others wait for their turn. */
public final class ImportJobs implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(ImportJobs.class);
    private static final int SECONDS_TO_STOP = 10;

    private final ImportStore store;
    private final Reader reader;
    private final Queue<UUID> waiting = new ConcurrentLinkedQueue<>();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(job -> {
        Thread made = new Thread(job, "frost-import");
        made.setDaemon(true);
        return made;
    });
    private volatile boolean stopping;

    public ImportJobs(ImportStore store) {
        this(store, ImportReader::read);
    }

    ImportJobs(ImportStore store, Reader reader) {
        this.store = store;
        this.reader = reader;
    }

    /** Reads what was ordered; see {@link ImportReader#read}. */
    interface Reader {
        void read(ImportReader.Order order, ImportedRows findings, ReadingProgress watch) throws IOException;
    }

    /**
     * Has the files read as soon as it is their turn. The order's folder with all files in it is deleted in the end, whatever
     * happens.
     *
     * @param source where the figures are from, kept with each station
     */
    UUID start(ImportReader.Order order, String source, UUID by) {
        String names = order.files().size() == 1
                ? order.files().get(0).name()
                : "%s and %d more"
                        .formatted(order.files().get(0).name(), order.files().size() - 1);
        UUID id = store.begin(order.kind(), names, bytes(order), by);
        waiting.add(id);
        thread.execute(() -> run(id, order, source, by));
        return id;
    }

    /** Whether it has not begun yet because another is being read. */
    boolean waits(UUID id) {
        return waiting.contains(id);
    }

    private void run(UUID id, ImportReader.Order order, String source, UUID by) {
        waiting.remove(id);
        ProblemList problems = new ProblemList();
        try {
            Pulse pulse = new Pulse(id);
            pulse.now(0, 0);
            store.bring(
                    id,
                    order.kind(),
                    by,
                    source,
                    problems,
                    pulse,
                    (findings, watch) -> reader.read(order, findings, watch));
        } catch (ReadingCancelled wanted) {
            if (stopping) {
                end(id, ImportState.FAILED, SAY.programStopped(), new ProblemList());
            }
        } catch (BadInput refused) {
            end(id, ImportState.REFUSED, String.valueOf(refused.getMessage()), problems);
        } catch (RuntimeException broken) {
            fail(id, broken);
        } finally {
            delete(order.folder());
        }
    }

    private void fail(UUID id, RuntimeException broken) {
        BadInput refused = cause(broken);
        if (refused != null) {
            end(id, ImportState.REFUSED, String.valueOf(refused.getMessage()), new ProblemList());
            return;
        }
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("fault {} in import {}", reference, id, broken);
        end(id, ImportState.FAILED, SAY.ourFault(reference), new ProblemList());
    }

    /** A file that breaks off or is damaged is its sender's affair, though it comes as a fault of reading. */
    private static @org.jspecify.annotations.Nullable BadInput cause(RuntimeException broken) {
        for (Throwable cause = broken; cause != null; cause = cause.getCause()) {
            if (cause instanceof java.util.zip.ZipException || cause instanceof java.io.EOFException) {
                return new BadInput(SAY.damaged());
            }
        }
        return null;
    }

    private void end(UUID id, ImportState state, String words, ProblemList problems) {
        try {
            store.end(id, state, words, problems);
        } catch (RuntimeException outOfReach) {
            // its silence will tell people that it was stopped
            LOG.error("import {} could not be marked as {}", id, state, outOfReach);
        }
    }

    private static long bytes(ImportReader.Order order) {
        try {
            long bytes = 0;
            for (UploadedFile file : order.files()) {
                bytes += Files.size(file.path());
            }
            return bytes;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Deletes a folder with the files in it. */
    static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepest = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepest) {
                Files.deleteIfExists(file);
            }
        } catch (IOException left) {
            LOG.warn("the temporary folder {} could not be deleted", folder, left);
        }
    }

    /** Ends what is being read, and what waits. */
    @Override
    public void close() {
        stopping = true;
        thread.shutdown();
        try {
            if (!thread.awaitTermination(SECONDS_TO_STOP, TimeUnit.SECONDS)) {
                LOG.warn("an import did not stop in time");
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    /** Writes how far a reading is a few times a second, and ends it when nobody wants it any more. */
    private final class Pulse implements ReadingProgress {
        private static final long BETWEEN_NANOS = 300_000_000;
        private static final int OTHERS_EVERY = 15;

        private final UUID id;
        private long lastNanos;
        private int beats;

        Pulse(UUID id) {
            this.id = id;
        }

        @Override
        public void at(long bytes, long rows) {
            if (stopping) {
                throw new ReadingCancelled();
            }
            if (System.nanoTime() - lastNanos > BETWEEN_NANOS) {
                now(bytes, rows);
            }
        }

        void now(long bytes, long rows) {
            lastNanos = System.nanoTime();
            if (stopping || !store.beat(id, bytes, rows)) {
                throw new ReadingCancelled();
            }
            if (beats++ % OTHERS_EVERY == 0 && !waiting.isEmpty()) {
                store.beat(List.copyOf(waiting));
            }
        }
    }
}
