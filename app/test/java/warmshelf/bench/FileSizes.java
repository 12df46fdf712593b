package warmshelf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** Looks at a file's size again and again. */
final class FileSizes implements AutoCloseable {
    private static final int EACH_MS = 20;

    private final Path file;
    private final Thread looking;
    private volatile long largest;

    FileSizes(Path file) {
        this.file = file;
        this.looking = new Thread(this::look);
        looking.setDaemon(true);
        looking.start();
    }

    private void look() {
        try {
            while (true) {
                largest = Math.max(largest, now());
                TimeUnit.MILLISECONDS.sleep(EACH_MS);
            }
        } catch (InterruptedException | IOException ended) {
            return;
        }
    }

    long now() throws IOException {
        return Files.size(file);
    }

    /** The largest size seen since the last call. */
    long largest() {
        long seen = largest;
        largest = 0;
        return seen;
    }

    @Override
    public void close() {
        looking.interrupt();
    }
}
