package warmshelf.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;

/** One small cellar for the tests of pictures: rack A, a lit shelf above a shelf with mats M1 (4 places) and M2 (2). */
final class DrawnCellar {
    static final LocalDate DAY = LocalDate.of(2027, 3, 10);
    static final UUID M1 = UUID.fromString("00000000-0000-4000-8000-000000000001");

    private DrawnCellar() {}

    static List<Site> sites() {
        return List.of(new Site(id("cellar"), "Hall cellar", 1, new Circuit(15, 120), "", 1, List.of(rack())));
    }

    static Rack rack() {
        Mat m1 = new Mat(M1, id("lower"), "M1", 1, 18, 32, 107, 25, LightAbove.NOT_KNOWN, 1, places("M1", 4));
        Mat m2 = new Mat(id("M2"), id("lower"), "M2", 2, 18, 32, 45, 22, LightAbove.NOT_KNOWN, 1, places("M2", 2));
        Shelf lit = new Shelf(id("upper"), id("A"), 1, 160, Lamp.NOT_KNOWN, 1, List.of(), places("lit", 2));
        Shelf warm = new Shelf(id("lower"), id("A"), 2, 0, Lamp.NOT_KNOWN, 1, List.of(m1, m2), List.of());
        return new Rack(id("A"), id("cellar"), "A", 1, 1, List.of(lit, warm));
    }

    static UUID place(String owner, int number) {
        return id(owner + " place " + number);
    }

    /** A stay on a place of mat M1. */
    static StayOnBoard stay(int place, int firstQuarter, int quarters, LocalDate from, LocalDate to) {
        String kind = quarters == 4 ? "tray" : quarters == 2 ? "half-tray" : "bag";
        return new StayOnBoard(
                id("stay " + place + firstQuarter + from),
                id("sowing " + place + firstQuarter + from),
                place("M1", place),
                firstQuarter,
                quarters,
                from,
                to,
                "Pepper",
                "Ilse",
                "sown",
                kind,
                null);
    }

    /** The same stay as a way of a trial. */
    static StayOnBoard inTrial(StayOnBoard stay, TrialOnBoard trial) {
        return new StayOnBoard(
                stay.stayId(),
                stay.sowingId(),
                stay.placeId(),
                stay.firstQuarter(),
                stay.quarters(),
                stay.from(),
                stay.to(),
                stay.cropName(),
                stay.memberName(),
                stay.stageWord(),
                stay.kind(),
                trial);
    }

    static Board board(StayOnBoard... stays) {
        return new Board(List.of(stays), new SetPoints(Map.of(M1, Map.of(DAY, 27.0))), List.of());
    }

    private static List<Place> places(String owner, int number) {
        return new ArrayList<>(IntStream.rangeClosed(1, number)
                .mapToObj(each -> new Place(place(owner, each), each))
                .toList());
    }

    private static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
