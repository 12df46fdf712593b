package warmshelf.plan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanNames;
import warmshelf.plan.engine.PlanParty;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.sowing.Sowing;

/**
 * What is to be planned, as the group's records stand, with the names behind the question's ids. Mats, circuits and lit shelves
 * go by their names; requests by the id of their sowing, stays by their own.
 *
 * @param asked requests by id
 * @param lying fixed stays by id
 * @param mats by name, in walking order
 * @param standing how the mats are set already, to a tenth of a degree
 * @param litPlaces the places of each lit shelf by its name, in the order of their numbers; none of held racks
 * @param held the mats by name that take nothing new, because their racks are held
 */
public record SeasonQuestion(
        PlanQuestion question,
        Map<String, Asked> asked,
        Map<String, Lying> lying,
        Map<String, MatSpace> mats,
        List<SetPointSpan> standing,
        Map<String, List<UUID>> litPlaces,
        Map<String, RackHold> held) {

    /**
     * A request.
     *
     * @param freed the published stay that the plan may move; null for one that waits
     * @param freedLight the place under a light that is booked for it after the freed stay, and moves with it; null: none is
     */
    public record Asked(
            Sowing sowing,
            SpaceRequest request,
            Request wanted,
            @Nullable Stay freed,
            @Nullable Stay freedLight) {
        /** For example 'Tom Okafor's Pepper · Lantern Row'. */
        public String title() {
            return "%s's %s".formatted(sowing.grower().name(), sowing.title());
        }
    }

    /**
     * A stay that no plan moves.
     *
     * @param surface its mat's or lit shelf's name
     * @param place its number
     */
    public record Lying(Stay stay, Sowing sowing, String surface, int place) {
        public String title() {
            return "%s's %s".formatted(sowing.grower().name(), sowing.title());
        }
    }

    /**
     * A mat, or a lit shelf, as a plan shows it.
     *
     * @param matId null for a lit shelf
     */
    public record Surface(
            String name, String where, @Nullable UUID matId, int places) {
        public boolean lit() {
            return matId == null;
        }

        boolean holds(Lying lying) {
            return lying.stay().isOnMat() != lit() && lying.surface().equals(name);
        }
    }

    /** The mats in walking order, then the lit shelves where the plan takes care of what comes off the heat. */
    List<Surface> surfaces() {
        List<Surface> surfaces = new ArrayList<>();
        mats.values()
                .forEach(mat -> surfaces.add(new Surface(
                        mat.name(), mat.where(), mat.id(), mat.places().size())));
        if (asked.values().stream().anyMatch(each -> each.wanted().light() != null)) {
            litPlaces.forEach((shelf, places) -> surfaces.add(new Surface(shelf, shelf, null, places.size())));
        }
        return surfaces;
    }

    /** The place on a mat that a placement takes; empty where the mat or the place is not there any more. */
    Optional<UUID> placeOf(PlacedStay planned) {
        return Optional.ofNullable(mats.get(planned.mat())).flatMap(mat -> numbered(mat.places(), planned.place()));
    }

    /** The place under a light that a placement takes after the mat; empty where it is not there any more. */
    Optional<UUID> placeOf(PlacedStay.LitStay planned) {
        return numbered(litPlaces.getOrDefault(planned.shelf(), List.of()), planned.place());
    }

    private static Optional<UUID> numbered(List<UUID> places, int number) {
        return number <= places.size() ? Optional.of(places.get(number - 1)) : Optional.empty();
    }

    /** Whether a published stay is planned on the very quarters and days of a mat on which it lies already. */
    boolean keepsMat(Asked asked, PlacedStay planned) {
        return asked.freed() != null && liesAt(asked.freed(), placeOf(planned), planned.slot(), planned.days());
    }

    /** Whether what is booked under a light after the mat is planned as it is booked; nothing and still nothing is the same too. */
    boolean keepsLight(Asked asked, PlacedStay planned) {
        Stay booked = asked.freedLight();
        PlacedStay.LitStay light = planned.light();
        if (booked == null || light == null) {
            return booked == null && light == null;
        }
        return liesAt(booked, placeOf(light), light.slot(), light.days());
    }

    private static boolean liesAt(Stay stay, Optional<UUID> place, Slot slot, DayRange days) {
        return place.filter(stay.placeId()::equals).isPresent()
                && slot.equals(stay.slot())
                && days.from().equals(stay.from())
                && days.to().equals(stay.to());
    }

    public LocalDate today() {
        return question.days().from();
    }

    /** Those who lie somewhere, by the titles of their sowings. */
    PlanNames names() {
        return who -> {
            String title = who instanceof PlanParty.OfRequest
                    ? Optional.ofNullable(asked.get(who.id())).map(Asked::title).orElse(null)
                    : Optional.ofNullable(lying.get(FixedAround.stayOf(who.id())))
                            .map(Lying::title)
                            .orElse(null);
            return title == null ? PlanNames.IN_FILE.of(who) : title;
        };
    }

    /** SHA-256 of everything asked, in hexadecimal: equal questions have equal hashes. */
    String hash() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(question.toString().getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
