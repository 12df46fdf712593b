package warmshelf.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.LitShelf;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlacedStay.LitStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Request;

/** Finds a place under a light for what a coordinator places by hand. */
final class LightFit {
    private final PlanQuestion question;
    private final List<LitStay> taken;

    /** Among everything fixed, and what a plan places besides. */
    LightFit(PlanQuestion question, List<PlacedStay> others) {
        this.question = question;
        Stream<LitStay> fixed = question.fixed().stream()
                .filter(stay -> stay.lit())
                .map(stay -> new LitStay(stay.surface(), stay.place(), stay.slot(), stay.days()));
        taken = Stream.concat(fixed, others.stream().flatMap(stay -> Stream.ofNullable(stay.light())))
                .toList();
    }

    /**
     * The first that is free from the end of a stay on a mat for as long as is asked, or to the end of the plan; at the mat's
     * own site if there is one.
     */
    Optional<LitStay> after(String mat, DayRange onMat, Request.Light light) {
        DayRange days = daysAfter(onMat, light);
        NearbyLight nearby = new NearbyLight(question);
        return on(days, light.quarters(), shelf -> nearby.isNear(mat, shelf))
                .or(() -> on(days, light.quarters(), shelf -> true));
    }

    /** The first that is free on those days on one of the shelves wished. */
    Optional<LitStay> on(DayRange days, int quarters, Predicate<String> shelves) {
        return shelves()
                .filter(shelf -> shelves.test(shelf.id()))
                .flatMap(shelf -> places(shelf, quarters, days))
                .filter(this::isFree)
                .findFirst();
    }

    private DayRange daysAfter(DayRange onMat, Request.Light light) {
        var to = onMat.to().plusDays(light.days());
        return new DayRange(
                onMat.to(), to.isAfter(question.days().to()) ? question.days().to() : to);
    }

    private Stream<LitShelf> shelves() {
        return Optional.ofNullable(question.litShelves()).stream().flatMap(List::stream);
    }

    private static Stream<LitStay> places(LitShelf shelf, int quarters, DayRange days) {
        return Stream.iterate(1, place -> place <= shelf.places(), place -> place + 1)
                .flatMap(place -> Slot.of(quarters).stream().map(slot -> new LitStay(shelf.id(), place, slot, days)));
    }

    private boolean isFree(LitStay wanted) {
        return taken.stream()
                .noneMatch(other -> other.shelf().equals(wanted.shelf())
                        && other.place() == wanted.place()
                        && other.slot().overlaps(wanted.slot())
                        && other.days().overlaps(wanted.days()));
    }
}
