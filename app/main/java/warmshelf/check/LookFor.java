package warmshelf.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.crop.Method;
import warmshelf.sowing.Sowing;
import warmshelf.timeline.Caution;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** What to look for and what to do then, in plain words; common practice where the reference tables say no more. */
final class LookFor {
    private static final String COMPOST =
            "Damp the compost before you tip it, keep it off your face, wear a mask if dust rises, and wash your"
                    + " hands.";

    private static final Set<CheckKind> NEAR_PLUGS =
            EnumSet.of(CheckKind.OFF_HEAT, CheckKind.LIGHT_LOOK, CheckKind.MAT_READING);

    private static final double LIGHT_ABOVE_MM = 100;

    private LookFor() {}

    static String day(LocalDate day) {
        return DayWords.day(day);
    }

    static String look(CheckKind kind, Subject subject, Units units) {
        Sowing sowing = subject.sowing();
        return switch (kind) {
            case SOAK ->
                "%d seeds of %s: into tepid water this evening, for tomorrow's sowing."
                        .formatted(sowing.seeds(), sowing.title());
            case SOW -> sowLine(sowing);
            case BAG_LOOK -> "Open the bag: does a root show? Is the paper damp, not dripping? Any mould?";
            case MOVE_TO_CELLS ->
                "%d with roots showing still lie in the bag."
                        .formatted(subject.progress().waitingToMove());
            case CELLS_LOOK -> "Is the surface moist, not soggy? How many are up? Stems thin at the soil, or fluff?";
            case OFF_HEAT ->
                "%s up. Seedlings want light now, and no more heat from below."
                        .formatted(
                                subject.progress().up() == 1
                                        ? "1 is"
                                        : subject.progress().up() + " are");
            case LIGHT_LOOK ->
                "Light about %s above the leaves? Water from below when the surface dries. Any that fall over?"
                        .formatted(units.length(LIGHT_ABOVE_MM));
            case FIRST_FEED -> "Do the first true leaves show (the pair after the seed leaves)?";
            case POT_ON -> "Do roots fill the cell, or leaves touch the neighbour's?";
            case HARDEN_OFF -> "Plants out for an hour or two in shade and shelter, longer each day, in at night.";
            case PLANT_OUT -> plantOutLine(sowing, units);
            case MAT_READING -> "Read the thermometer in the compost or under the bag.";
        };
    }

    private static String sowLine(Sowing sowing) {
        if (sowing.method() == Method.BAG) {
            return "%d seeds, spread apart on damp paper, folded into the bag, onto the mat.".formatted(sowing.seeds());
        }
        return "%d seeds into %d cells, %s to a cell.".formatted(sowing.seeds(), sowing.cells(), sowing.seedsPerCell());
    }

    private static String plantOutLine(Sowing sowing, Units units) {
        Double night = sowing.crop().nightMinimumC();
        return night == null
                ? "Plant out on a still, cloudy day, and water in."
                : "Plant out when nights stay above %s, on a still, cloudy day; water in."
                        .formatted(units.temperature(night));
    }

    static String ifSeen(CheckKind kind, Subject subject, Units units) {
        return switch (kind) {
            case SOAK -> "Common practice, and optional; a night is enough.";
            case SOW -> "Write the label first: crop, variety, whose, today's date. Everyone forgets.";
            case BAG_LOOK -> "A root just showing: move that seed into a cell today, root down, without pulling at it.";
            case MOVE_TO_CELLS ->
                "Into a cell each, root down, %s deep; do not break the root. Label the cells."
                        .formatted(depth(subject.sowing(), units));
            case CELLS_LOOK -> "Up: tick how many. Fallen stems: take them out, give air, water less.";
            case OFF_HEAT ->
                "Off the mat, lid off, under the light: about %s above the leaves, 14 to 16 hours a day."
                        .formatted(units.length(LIGHT_ABOVE_MM));
            case LIGHT_LOOK -> "Raise the light as they grow. Take out what has fallen, and the compost around it.";
            case FIRST_FEED -> "Feed at half the strength on the label, on damp compost.";
            case POT_ON -> "Lift by a leaf or the rootball, never by the stem. Label each pot.";
            case HARDEN_OFF -> "A week or so. Back in when wind or cold threatens.";
            case PLANT_OUT -> "Keep a cover at hand for a late cold night. Label the row.";
            case MAT_READING ->
                "More than %s off the set-point: turn it and tell a coordinator."
                        .formatted(units.temperatureDifference(MatAlarm.BEARABLE_C));
        };
    }

    private static String depth(Sowing sowing, Units units) {
        Double depthMm = sowing.crop().depthMm();
        return depthMm == null ? "just" : units.length(depthMm);
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

    static String caution(CheckKind kind, Subject subject) {
        return Stream.concat(hazards(kind, subject).map(Caution::sentence), ofTheWork(kind).stream())
                .collect(Collectors.joining(" "));
    }

    private static Optional<String> ofTheWork(CheckKind kind) {
        return switch (kind) {
            case SOW, MOVE_TO_CELLS, POT_ON -> Optional.of(COMPOST);
            case BAG_LOOK -> Optional.of("Mould: keep your face away from it and wash your hands.");
            case MAT_READING ->
                Optional.of("Dry hands at plugs and thermostats; plugs above tray height, on a ground-fault"
                        + " protected outlet. A damaged cord: switch off and tell a coordinator.");
            case LIGHT_LOOK -> Optional.of("A high light: use a step stool, not a chair, and mind water near plugs.");
            case OFF_HEAT -> Optional.of("Unplug the mat or dry your hands before you lift wet trays off it.");
            case SOAK, CELLS_LOOK, FIRST_FEED, HARDEN_OFF, PLANT_OUT -> Optional.empty();
        };
    }
}
