package warmshelf.plan.engine;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.allocation.Band;

/** What never moves must hold together by itself: no plan could mend it. */
public final class FixedStays {
    private final PlanQuestion question;
    private final Map<String, PlannedMat> mats;
    private final Map<String, LitShelf> shelves;

    private FixedStays(PlanQuestion question) {
        this.question = question;
        mats = question.mats().stream().collect(Collectors.toMap(PlannedMat::id, mat -> mat));
        List<LitShelf> lit = question.litShelves() == null ? List.of() : question.litShelves();
        shelves = new HashMap<>();
        for (LitShelf shelf : lit) {
            if (shelves.put(shelf.id(), shelf) != null) {
                throw new BadInput(
                        "The id '%s' stands twice in 'litShelves'; each is accepted once.".formatted(shelf.id()));
            }
        }
    }

    /** Refuses mats on unknown circuits and fixed stays that are nowhere, overlap, or cannot be kept warm together. */
    public static void check(PlanQuestion question) {
        FixedStays fixed = new FixedStays(question);
        fixed.mats.values().forEach(fixed::onAKnownCircuit);
        question.fixed().forEach(fixed::liesSomewhere);
        fixed.eachQuarterOnce();
        fixed.warmTogether();
        fixed.withinEachCircuit();
    }

    private void onAKnownCircuit(PlannedMat mat) {
        boolean known = mat.circuit() == null
                || question.circuits().stream().anyMatch(circuit -> circuit.id().equals(mat.circuit()));
        if (!known) {
            throw new BadInput("The mat '%s' is on a circuit '%s' that 'circuits' does not list."
                    .formatted(mat.id(), mat.circuit()));
        }
    }

    private void liesSomewhere(FixedStay stay) {
        int places = stay.lit() ? litPlaces(stay) : mat(stay).places();
        if (stay.place() > places) {
            throw new BadInput("The fixed stay '%s' lies on place %d of '%s', which has %d."
                    .formatted(stay.id(), stay.place(), stay.surface(), places));
        }
    }

    private int litPlaces(FixedStay stay) {
        LitShelf shelf = shelves.get(stay.surface());
        if (shelf == null) {
            throw nowhere(stay);
        }
        return shelf.places();
    }

    private PlannedMat mat(FixedStay stay) {
        PlannedMat mat = mats.get(stay.surface());
        if (mat == null) {
            throw nowhere(stay);
        }
        return mat;
    }

    private static BadInput nowhere(FixedStay stay) {
        return new BadInput(
                "The fixed stay '%s' lies on '%s', which the file does not list.".formatted(stay.id(), stay.surface()));
    }

    private void eachQuarterOnce() {
        Map<String, FixedStay> taken = new HashMap<>();
        for (FixedStay stay : question.fixed()) {
            for (LocalDate day : within(stay)) {
                for (int quarter : JsonFields.numbers(stay.slot())) {
                    String key = "%b|%s|%d|%d|%s".formatted(stay.lit(), stay.surface(), stay.place(), quarter, day);
                    FixedStay other = taken.put(key, stay);
                    if (other != null) {
                        throw new BadInput(
                                "The fixed stays '%s' and '%s' both lie on quarter %d of place %d of '%s' on %s."
                                        .formatted(other.id(), stay.id(), quarter, stay.place(), stay.surface(), day));
                    }
                }
            }
        }
    }

    private void warmTogether() {
        Map<String, Band> common = new HashMap<>();
        for (FixedStay stay : question.fixed()) {
            Band band = stay.band();
            if (band == null) {
                continue;
            }
            PlannedMat mat = mat(stay);
            for (LocalDate day : within(stay)) {
                if (!mat.servesOn(day)) {
                    throw new BadInput(
                            "The fixed stay '%s' lies on the mat '%s' on %s, when that mat is out of service."
                                    .formatted(stay.id(), mat.id(), day));
                }
                Band shared = meet(common.getOrDefault(mat.id() + "|" + day, mat.thermostat()), band);
                if (shared == null) {
                    throw new BadInput(
                            "No set-point of the mat '%s' suits the fixed stay '%s' and what else lies there on %s."
                                    .formatted(mat.id(), stay.id(), day));
                }
                common.put(mat.id() + "|" + day, shared);
            }
        }
    }

    private void withinEachCircuit() {
        Map<String, Set<String>> warmed = new HashMap<>();
        for (FixedStay stay : question.fixed()) {
            String circuit = stay.lit() ? null : mat(stay).circuit();
            if (circuit != null) {
                within(stay)
                        .forEach(day -> warmed.computeIfAbsent(circuit + "|" + day, key -> new HashSet<>())
                                .add(stay.surface()));
            }
        }
        for (CircuitFeed circuit : question.circuits()) {
            question.days().from().datesUntil(question.days().to()).forEach(day -> {
                int load = warmed.getOrDefault(circuit.id() + "|" + day, Set.of()).stream()
                        .mapToInt(mat -> Objects.requireNonNull(mats.get(mat)).watts())
                        .sum();
                if (load > circuit.rating().continuousWatts()) {
                    throw new BadInput(
                            "The fixed stays alone load the circuit '%s' with %,d watts on %s; at most %,d are accepted."
                                    .formatted(
                                            circuit.id(),
                                            load,
                                            day,
                                            circuit.rating().continuousWatts()));
                }
            });
        }
    }

    /** The days of a stay that the plan is about. */
    private List<LocalDate> within(FixedStay stay) {
        return question.days().overlaps(stay.days())
                ? question.days()
                        .from()
                        .datesUntil(question.days().to())
                        .filter(stay.days()::contains)
                        .toList()
                : List.of();
    }

    private static @Nullable Band meet(Band a, Band b) {
        return a.overlaps(b) ? new Band(Math.max(a.lowC(), b.lowC()), Math.min(a.highC(), b.highC())) : null;
    }
}
