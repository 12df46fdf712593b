package warmshelf.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.crop.UsualSowing;
import warmshelf.guide.Advice;
import warmshelf.shelf.Lamp;
import warmshelf.sowing.Sowing;
import warmshelf.timeline.Caution;
import warmshelf.timeline.Step;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** What to look for and what to do then, as the texts of the steps say it of one sowing. */
final class LookFor {
    private static final Set<CheckKind> NEAR_PLUGS =
            EnumSet.of(CheckKind.OFF_HEAT, CheckKind.TAKE_HOME, CheckKind.LIGHT_LOOK, CheckKind.MAT_READING);

    private LookFor() {}

    static String day(LocalDate day) {
        return DayWords.day(day);
    }

    static String look(CheckKind kind, Subject subject, Units units) {
        return text("look", kind, subject, units);
    }

    static String ifSeen(CheckKind kind, Subject subject, Units units) {
        return text("then", kind, subject, units);
    }

    private static String text(String section, CheckKind kind, Subject subject, Units units) {
        return Advice.in(units)
                .say(kind.file(), kind.section(section, subject.sowing().method()), values(subject, units));
    }

    private static Map<String, Object> values(Subject subject, Units units) {
        Sowing sowing = subject.sowing();
        Double nights = sowing.crop().nightMinimumC();
        Double depth = sowing.crop().depthMm();
        int up = subject.progress().up();
        Map<String, Object> values = new HashMap<>(Map.of(
                "sowing", sowing.title(),
                "seeds", sowing.seeds(),
                "cells", sowing.cells(),
                "seedsPerCell", sowing.seedsPerCell(),
                "waiting", subject.progress().waitingToMove(),
                "up", up,
                "isOne", up == 1,
                "nights", nights == null ? "" : units.temperature(nights),
                "depth", depth == null ? "" : units.length(depth),
                "off", units.temperatureDifference(MatAlarm.BEARABLE_C)));
        values.putAll(lamp(subject.lamp()));
        values.put(
                "homeBy",
                subject.step(Step.TAKE_HOME)
                        .map(step -> DayWords.day(step.latest()))
                        .orElse(""));
        values.put("onSurface", sowing.crop().light().isNeeded());
        values.put("severalInACell", sowing.seedsPerCell() > 1);
        values.put("ownPot", UsualSowing.of(sowing.crop()).isPresent());
        return values;
    }

    /** Left out where nobody has said. */
    private static Map<String, Object> lamp(Lamp lamp) {
        Map<String, Object> said = new HashMap<>(Map.of("lamp", lamp.kind().word()));
        if (lamp.hours() != null) {
            said.put("lampHours", lamp.hours());
        }
        if (lamp.timer() != null) {
            said.put("lampTimer", lamp.timer() ? "yes" : "no");
        }
        return said;
    }

    /** What stands open at the check: the hazards of what is handled, and electricity where a plug or a lamp is near. */
    static String careful(CheckKind kind, Subject subject) {
        List<String> lines =
                hazards(kind, subject).map(Caution::brief).collect(Collectors.toCollection(ArrayList::new));
        if (NEAR_PLUGS.contains(kind)) {
            lines.add(Caution.ELECTRICITY.brief());
        }
        return String.join(" ", lines);
    }

    private static Stream<Caution> hazards(CheckKind kind, Subject subject) {
        return kind.handles().stream()
                .flatMap(step -> Caution.of(subject.sowing().hazards(), step).stream());
    }

    /** The whole of it, with what the work does besides. */
    static String caution(CheckKind kind, Subject subject) {
        String section = kind.section("cautions", subject.sowing().method());
        Stream<Caution> ofTheWork =
                Caution.ofTheWork(kind.file(), section).stream().filter(caution -> !caution.standsOpen());
        return Stream.of(
                        hazards(kind, subject).map(Caution::sentence),
                        kind.care().stream(),
                        ofTheWork.map(Caution::sentence))
                .flatMap(lines -> lines)
                .collect(Collectors.joining(" "));
    }
}
