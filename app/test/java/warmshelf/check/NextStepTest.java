package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.timeline.PlantingOut;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineQuestion;
import warmshelf.words.Units;

class NextStepTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 3, 1);
    private static final LocalDate OUT = LocalDate.of(2027, 3, 22);
    private static final UUID GROWER = new UUID(0, 2);

    @Test
    void a_quick_crop_that_is_fed_goes_on_to_hardening_off_without_a_pot() {
        LocalDate today = LocalDate.of(2027, 3, 14);
        Subject fed = fed(CropCatalogue.bundled().get("cucumber"), today);

        assertThat(fed.step(Step.POT_ON)).isEmpty();
        assertThat(ChecksDue.on(today, fed)).extracting(Check::kind).containsExactly(CheckKind.HARDEN_OFF);
    }

    private static Subject fed(Crop crop, LocalDate today) {
        Sowing sowing = sowing(crop);
        List<Entry> entries = List.of(
                entry(sowing, EntryStep.SOWN, SOWN),
                entry(sowing, EntryStep.UNDER_LIGHT, SOWN.plusDays(5)),
                entry(sowing, EntryStep.FIRST_FEED, SOWN.plusDays(11)));
        Progress progress = Progress.of(Method.CELLS, sowing.seeds(), entries);
        Timeline timeline = Timeline.plan(new TimelineQuestion(
                crop,
                CropCatalogue.bundled().responseOf(crop),
                Method.CELLS,
                new PlantingOut.UnderCover(OUT),
                true,
                26,
                today,
                progress.seen(),
                Units.METRIC));
        return new Subject(sowing, progress, null, timeline, OptionalInt.empty(), java.util.OptionalDouble.empty());
    }

    private static Sowing sowing(Crop crop) {
        Sowing.Grower grower = new Sowing.Grower(GROWER, "Tom", "US", "55804");
        return new Sowing(
                new UUID(0, 1),
                grower,
                2027,
                SeasonPart.SPRING,
                crop,
                new UUID(0, 3),
                "Gravel Road",
                false,
                8,
                Method.CELLS,
                true,
                Container.HALF_TRAY,
                16,
                1,
                16,
                0.1,
                OUT,
                SowingStage.FED,
                "",
                1,
                null);
    }

    private static Entry entry(Sowing sowing, EntryStep step, LocalDate day) {
        return new Entry(
                UUID.nameUUIDFromBytes(step.word().getBytes(StandardCharsets.UTF_8)),
                sowing.id(),
                step,
                day,
                day.atTime(18, 0).atOffset(ZoneOffset.UTC),
                null,
                null,
                null,
                false,
                null,
                "",
                null,
                GROWER,
                "Tom");
    }
}
