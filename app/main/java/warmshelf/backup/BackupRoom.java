package warmshelf.backup;

import static warmshelf.backup.BackupSentences.SAY;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.Upkeep;
import warmshelf.db.Database;
import warmshelf.db.DiskRoom;
import warmshelf.db.EndOfWork;
import warmshelf.group.GroupStore;
import warmshelf.web.Aside;
import warmshelf.web.HealthPart;

/** Backups, wired; and the work that makes them while nobody asks. */
public final class BackupRoom {
    private static final Logger LOG = LoggerFactory.getLogger(BackupRoom.class);
    private static final int THINK_EVERY_SECONDS = 30;
    /** Whoever wants one by a command waits for it. */
    private static final int LOOK_EVERY_MS = 500;

    private final @Nullable Path data;
    private final @Nullable BackupWork work;
    private final Database database;
    private final Clock clock;

    private BackupRoom(@Nullable Path data, @Nullable BackupWork work, Database database, Clock clock) {
        this.data = data;
        this.work = work;
        this.database = database;
        this.clock = clock;
    }

    public static BackupRoom over(Database database, GroupStore group, Upkeep upkeep, Clock clock) {
        @Nullable Path data = database.folder().orElse(null);
        if (data == null) {
            return new BackupRoom(null, null, database, clock);
        }
        BackupFolder folder = new BackupFolder(upkeep.backupsOf(data));
        BackupWork work = new BackupWork(
                new BackupMaker(new OpenData(database), folder, clock),
                folder,
                upkeep.backupAt(),
                () -> group.find().map(found -> found.profile().zone()),
                clock);
        return new BackupRoom(data, work, database, clock);
    }

    /** Makes what is due or wanted until it is closed. */
    public AutoCloseable start() {
        BackupWork working = work;
        Path folder = data;
        if (working == null || folder == null) {
            return () -> {};
        }
        ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "backups");
            thread.setDaemon(true);
            return thread;
        });
        every(LOOK_EVERY_MS, TimeUnit.MILLISECONDS, executor, () -> working.answerWishes(folder));
        every(THINK_EVERY_SECONDS, TimeUnit.SECONDS, executor, working::makeIfDue);
        return () -> EndOfWork.await(executor);
    }

    private static void every(long time, TimeUnit unit, ScheduledExecutorService executor, Runnable work) {
        var unused = executor.scheduleWithFixedDelay(() -> once(work), time, time, unit);
    }

    /** What fails is told in the log and done again the next time. */
    private static void once(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException fault) {
            LOG.error("backups could not be seen to this time; they are the next", fault);
        }
    }

    /** How they stand, for coordinators. */
    public Aside news() {
        return new BackupNews(work, database.isShared(), clock);
    }

    /** When the newest was made; empty: there is none, or none is made here. */
    public Optional<Instant> newest() {
        return Optional.ofNullable(work).map(BackupWork::state).map(BackupState::newest);
    }

    /** How they stand, for scripts that watch: nothing of the group. */
    public HealthPart health() {
        BackupWork working = work;
        if (working == null) {
            return new HealthPart("backup", Map.of("state", database.isShared() ? "elsewhere" : "off"), List.of());
        }
        BackupState state = working.state();
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("state", state.kind().code());
        Instant newest = state.newest();
        if (newest != null) {
            facts.put("ageHours", Duration.between(newest, clock.instant()).toHours());
        }
        return new HealthPart("backup", facts, problems(state));
    }

    /** Whether the disk has room, for people. */
    public Aside diskNews() {
        return new DiskNews(database);
    }

    /** Whether the disk has room, for scripts that watch. */
    public HealthPart diskHealth() {
        DiskRoom.State state = database.room().map(DiskRoom::state).orElse(DiskRoom.State.ROOMY);
        List<HealthPart.Problem> problems = switch (state) {
            case ROOMY -> List.of();
            case LOW -> List.of(new HealthPart.Problem("disk-low", SAY.diskLow()));
            case FULL -> List.of(new HealthPart.Problem("disk-full", SAY.diskFull()));
        };
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("state", state.code());
        facts.put("writes", state != DiskRoom.State.FULL);
        return new HealthPart("disk", facts, problems);
    }

    private static List<HealthPart.Problem> problems(BackupState state) {
        BackupTrouble.Reason trouble = state.trouble();
        if (trouble != null) {
            return List.of(new HealthPart.Problem("backup-failed", BackupNews.reason(trouble)));
        }
        return state.isAmiss() ? List.of(new HealthPart.Problem("backup-old", SAY.old())) : List.of();
    }
}
