package warmshelf.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalLong;
import java.util.function.LongSupplier;

/**
 * The room on the disk where the data lie. Part of it is kept free: the database closes, for readers too, when the disk is full to
 * the last, so writing ends before.
 */
public final class DiskRoom {
    /** Below so many times what is kept free, coordinators are told. */
    private static final int LOW_BELOW = 3;

    private static final long LOW_DAYS = 14;
    private static final Duration LOOKED_AT_EVERY = Duration.ofMillis(200);
    private static final Duration NOTED_EVERY = Duration.ofHours(1);
    private static final int NOTES = 7 * 24;

    private final LongSupplier usable;
    private final LongSupplier nanos;
    private final Deque<Note> notes = new ArrayDeque<>();
    private volatile long keptFree;
    private Note last;

    /** Bytes that were free at a moment. */
    private record Note(long nanos, long free) {}

    /** How it stands. */
    public enum State {
        ROOMY("roomy"),
        LOW("low"),
        FULL("full");

        private final String code;

        State(String code) {
            this.code = code;
        }

        /** For scripts and pages. */
        public String code() {
            return code;
        }
    }

    DiskRoom(LongSupplier usable, LongSupplier nanos) {
        this.usable = usable;
        this.nanos = nanos;
        this.last = new Note(nanos.getAsLong(), usable.getAsLong());
        notes.add(last);
    }

    static DiskRoom of(Path folder) {
        return new DiskRoom(
                () -> {
                    try {
                        return Files.getFileStore(folder).getUsableSpace();
                    } catch (IOException unreadable) {
                        throw new UncheckedIOException(unreadable);
                    }
                },
                System::nanoTime);
    }

    /** Bytes that are to stay free; none until this is said. */
    public void keepFree(long bytes) {
        keptFree = bytes;
    }

    /** Bytes that are free now. */
    public synchronized long free() {
        long now = nanos.getAsLong();
        if (now - last.nanos() >= LOOKED_AT_EVERY.toNanos()) {
            last = new Note(now, usable.getAsLong());
            if (now - notes.getLast().nanos() >= NOTED_EVERY.toNanos()) {
                notes.add(last);
                if (notes.size() > NOTES) {
                    notes.removeFirst();
                }
            }
        }
        return last.free();
    }

    /** Whether people's writing has to wait. */
    public boolean isFull() {
        return free() < keptFree;
    }

    /** Whether even what the program writes by itself, such as who was about, has to wait. */
    boolean isExhausted() {
        return free() < keptFree / 2;
    }

    /** Days left at the rate of the last days; empty where it does not fill, or nothing can be said yet. */
    public synchronized OptionalLong daysLeft() {
        long free = free();
        Note first = notes.getFirst();
        return DiskForecast.daysLeft(Duration.ofNanos(last.nanos() - first.nanos()), first.free(), free, keptFree);
    }

    public State state() {
        if (isFull()) {
            return State.FULL;
        }
        OptionalLong days = daysLeft();
        return free() < LOW_BELOW * keptFree || (days.isPresent() && days.getAsLong() < LOW_DAYS)
                ? State.LOW
                : State.ROOMY;
    }
}
