package warmshelf.demo;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.check.Tick;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;

/** A tick in the making; see {@link Tick} for what each figure means. */
record DemoTick(
        EntryStep step,
        LocalDate day,
        @Nullable Integer sprouted,
        @Nullable Integer moved,
        @Nullable Integer lost,
        boolean isFinished,
        @Nullable Problem problem,
        String note,
        Tick.@Nullable LightPlace lightPlace,
        @Nullable UUID supersedes) {

    DemoTick(EntryStep step, LocalDate day) {
        this(step, day, null, null, null, false, null, "", null, null);
    }

    DemoTick sprouted(int soFar) {
        return new DemoTick(step, day, soFar, moved, lost, isFinished, problem, note, lightPlace, supersedes);
    }

    DemoTick moved(int soFar) {
        return new DemoTick(step, day, sprouted, soFar, lost, isFinished, problem, note, lightPlace, supersedes);
    }

    DemoTick lost(int soFar) {
        return new DemoTick(step, day, sprouted, moved, soFar, isFinished, problem, note, lightPlace, supersedes);
    }

    DemoTick finished() {
        return new DemoTick(step, day, sprouted, moved, lost, true, problem, note, lightPlace, supersedes);
    }

    DemoTick problem(Problem seen) {
        return new DemoTick(step, day, sprouted, moved, lost, isFinished, seen, note, lightPlace, supersedes);
    }

    DemoTick note(String words) {
        return new DemoTick(step, day, sprouted, moved, lost, isFinished, problem, words, lightPlace, supersedes);
    }

    DemoTick under(Tick.@Nullable LightPlace place) {
        return new DemoTick(step, day, sprouted, moved, lost, isFinished, problem, note, place, supersedes);
    }

    DemoTick superseding(UUID slip) {
        return new DemoTick(step, day, sprouted, moved, lost, isFinished, problem, note, lightPlace, slip);
    }

    Tick tick() {
        return new Tick(
                UUID.randomUUID(), step, day, sprouted, moved, lost, isFinished, problem, note, lightPlace, supersedes);
    }
}
