package warmshelf.plan.engine.solver;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringTokenizer;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * The parent's side of {@link SolverChild}. If the child cannot be started, dies, or prints nonsense, there is simply no
 * further bound and no further plan. Its native library lies in a folder of its own that goes when it goes.
 */
public final class SolverProcess implements AutoCloseable {
    private static final long LOOK_AGAIN_MS = 20;

    private final @Nullable Process process;
    private final @Nullable Path folder;
    private @Nullable Thread listener;
    private double bound = Double.POSITIVE_INFINITY;
    private int @Nullable [] plan;
    private boolean asked;

    private SolverProcess(@Nullable Process process, @Nullable Path folder) {
        this.process = process;
        this.folder = folder;
    }

    /** Starts the solver, which then waits to be asked. */
    public static SolverProcess start() {
        return start(List.of(SolverChild.class.getName()));
    }

    /** Starts any class as the child, with its arguments. */
    public static SolverProcess start(List<String> classAndArguments) {
        @Nullable Path folder = null;
        try {
            folder = SolverFolders.create();
            Path java = Path.of(System.getProperty("java.home"), "bin", "java");
            ProcessBuilder builder = new ProcessBuilder(
                    java.toString(),
                    "-Xmx1g",
                    // quick to start rather than quick in the long run: the work is done in the native library
                    "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC",
                    "-Djava.io.tmpdir=" + folder,
                    "-XX:ErrorFile=" + folder.resolve("crash.log"),
                    "-classpath",
                    System.getProperty("java.class.path"));
            builder.command().addAll(classAndArguments);
            builder.redirectError(ProcessBuilder.Redirect.DISCARD);
            SolverProcess started = new SolverProcess(builder.start(), folder);
            started.listener = started.inBackground(started::listen);
            return started;
        } catch (IOException noChild) {
            SolverFolders.delete(folder);
            return new SolverProcess(null, null);
        }
    }

    /**
     * Asks a question; what was found for the one before is forgotten. Only when that one is answered.
     *
     * @param seconds by the clock
     * @param work in the solver's own deterministic units
     */
    public void ask(IntegerProgram program, double seconds, double work, int startingNumber) {
        if (isRunning()) {
            throw new IllegalStateException("the solver has not answered yet");
        }
        synchronized (this) {
            bound = Double.POSITIVE_INFINITY;
            plan = null;
            asked = true;
        }
        inBackground(() -> send(program, seconds + " " + work + " " + startingNumber));
    }

    /** No plan is worth more than this, as far as is known; infinite while nothing is. */
    public synchronized OptionalDouble bound() {
        return Double.isInfinite(bound) ? OptionalDouble.empty() : OptionalDouble.of(bound);
    }

    /** The numbers of the best plan it found. */
    public synchronized Optional<int[]> plan() {
        return Optional.ofNullable(plan);
    }

    /** Whether an answer is still to be expected. */
    public synchronized boolean isRunning() {
        // as long as it is listened to: what it said last may still be on the way
        return asked && isAlive();
    }

    /** Whether it can be asked at all. */
    public boolean isAlive() {
        return listener != null && listener.isAlive();
    }

    /** Waits for the answer; false when {@code enough} said so before. */
    public boolean await(BooleanSupplier enough) {
        while (isRunning()) {
            if (enough.getAsBoolean()) {
                return false;
            }
            try {
                Thread.sleep(LOOK_AGAIN_MS);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
        return true;
    }

    /** Ends it, whatever it is doing, and cleans up. */
    @Override
    public void close() {
        if (process != null) {
            process.destroyForcibly();
            try {
                process.waitFor(5, TimeUnit.SECONDS);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            }
        }
        SolverFolders.delete(folder);
    }

    private Thread inBackground(Runnable task) {
        Thread thread = new Thread(task, "solver");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private void send(IntegerProgram program, String limits) {
        if (process != null) {
            // a child that died meanwhile makes the stream remember an error, which is of no concern
            PrintStream out = new PrintStream(process.getOutputStream(), false, StandardCharsets.UTF_8);
            out.println(limits);
            program.write(out);
        }
    }

    private void listen() {
        if (process == null) {
            return;
        }
        try (BufferedReader in = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                hear(line);
            }
        } catch (IOException | NumberFormatException broken) {
            // what was heard before stays true; the rest of a broken child's words is worth nothing
            process.destroyForcibly();
        }
    }

    private synchronized void hear(String line) {
        if (line.startsWith("bound ")) {
            bound = Math.min(bound, Double.parseDouble(line.substring("bound ".length())));
        } else if (line.startsWith("plan ")) {
            StringTokenizer words = new StringTokenizer(line.substring("plan ".length()));
            int[] values = new int[words.countTokens()];
            for (int i = 0; i < values.length; i++) {
                values[i] = Integer.parseInt(words.nextToken());
            }
            plan = values;
        } else if (line.equals("done")) {
            asked = false;
        }
    }

    /** Where its native library lies; empty where it did not start. */
    Optional<Path> folder() {
        return Optional.ofNullable(folder);
    }
}
