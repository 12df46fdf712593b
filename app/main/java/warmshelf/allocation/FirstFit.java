package warmshelf.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * The quick answer at the counter: for one request the free space nearest to its ideal day, and for several of them first
 * fit in the order of their ideal days.
 */
public final class FirstFit {
    /**
     * Of two mats with room on the same day, for seed that needs light one that is known to be lit; then the one that need not be
     * turned far from its usual set-point.
     */
    private static Comparator<SpaceOffer> nearestToIdeal(boolean needsLight) {
        return Comparator.comparingInt((SpaceOffer offer) -> Math.abs(offer.shiftDays()))
                .thenComparing(SpaceOffer::from)
                .thenComparing(offer -> needsLight && !offer.mat().light().isLit())
                .thenComparingDouble(
                        offer -> Math.abs(offer.warm().first() - offer.mat().usualC()));
    }

    private final SpaceCalendar board;
    private final LocalDate today;

    public FirstFit(SpaceCalendar board, LocalDate today) {
        this.board = board;
        this.today = today;
    }

    /** The best offer of each mat, nearest to the ideal day first. */
    public List<SpaceOffer> offers(SpaceWish wish, int atMost) {
        List<SpaceOffer> offers = new ArrayList<>();
        board.mats().forEach(mat -> bestOn(mat, wish).ifPresent(offers::add));
        offers.sort(nearestToIdeal(wish.needsLight()));
        return offers.subList(0, Math.min(atMost, offers.size()));
    }

    /** The best offer, or the true reason why there is none. */
    public SpaceAnswer answer(SpaceWish wish) {
        List<SpaceOffer> offers = offers(wish, 1);
        return offers.isEmpty() ? new SpaceAnswer.None(reason(wish)) : new SpaceAnswer.Space(offers.get(0));
    }

    /** Answers many requests, the earliest ideal day first; each accepted offer is taken before the next is sought. */
    public Map<UUID, SpaceAnswer> answerAll(List<SpaceWish> wishes) {
        Map<UUID, SpaceAnswer> answers = new LinkedHashMap<>();
        List<SpaceWish> inOrder = new ArrayList<>(wishes);
        inOrder.sort(Comparator.comparing(SpaceWish::ideal).thenComparing(SpaceWish::sowingId));
        for (SpaceWish wish : inOrder) {
            SpaceAnswer answer = answer(wish);
            if (answer instanceof SpaceAnswer.Space space) {
                board.accept(space.offer());
            }
            answers.put(wish.sowingId(), answer);
        }
        return answers;
    }

    private NoSpace reason(SpaceWish wish) {
        if (wish.latest().isBefore(today)) {
            return new NoSpace.TooLate(wish.latest());
        }
        List<MatSpace> inBand = board.mats().stream()
                .filter(mat -> new StayWarmth(board, mat, wish.band()).isPossible())
                .toList();
        if (inBand.isEmpty()) {
            return new NoSpace.NoMatInBand(wish.band());
        }
        List<MatSpace> lit = inBand.stream().filter(wish::sees).toList();
        if (lit.isEmpty()) {
            return new NoSpace.AllDark(wish.band());
        }
        return lit.stream().allMatch(mat -> board.isClosed(mat.id()))
                ? new NoSpace.AllHeld(wish.band())
                : new NoSpace.Full(firstDay(wish), wish.latest());
    }

    /** The best offer on one place. */
    public Optional<SpaceOffer> offerOn(MatSpace mat, UUID place, SpaceWish wish) {
        return bestOn(mat, List.of(place), wish);
    }

    private Optional<SpaceOffer> bestOn(MatSpace mat, SpaceWish wish) {
        return bestOn(mat, mat.places(), wish);
    }

    private Optional<SpaceOffer> bestOn(MatSpace mat, List<UUID> places, SpaceWish wish) {
        if (board.isClosed(mat.id()) || !wish.sees(mat) || !new StayWarmth(board, mat, wish.band()).isPossible()) {
            return Optional.empty();
        }
        for (LocalDate start : startsNearestFirst(wish)) {
            Optional<SpaceOffer> offer = startingOn(mat, places, wish, start);
            if (offer.isPresent()) {
                return offer;
            }
        }
        return Optional.empty();
    }

    private Optional<SpaceOffer> startingOn(MatSpace mat, List<UUID> places, SpaceWish wish, LocalDate start) {
        StayWarmth warmth = new StayWarmth(board, mat, wish.band());
        WarmDays last = null;
        for (double asked : warmth.fitting(wanted(mat, start))) {
            WarmDays warm = warmth.from(start, asked, wish.daysAt());
            // Where the mat is set for days already, another wish changes nothing.
            if (warm.equals(last)) {
                continue;
            }
            last = warm;
            if (SpaceJudge.tooWarmOrCold(board, mat, warm, wish.band()).isEmpty()) {
                Optional<SpaceOffer> offer = freePlace(mat, places, wish, warm, asked);
                if (offer.isPresent()) {
                    return offer;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<SpaceOffer> freePlace(
            MatSpace mat, List<UUID> among, SpaceWish wish, WarmDays warm, double asked) {
        // The fullest place first: bags gather in one place and leave whole ones for trays.
        List<UUID> places = new ArrayList<>(among);
        places.sort(Comparator.comparingInt((UUID place) -> -board.takenQuarters(place, warm.from())));
        for (UUID place : places) {
            for (Slot slot : Slot.of(wish.quarters())) {
                if (board.isFree(place, slot, warm.from(), warm.to())) {
                    int number = mat.places().indexOf(place) + 1;
                    int shift = (int) (warm.from().toEpochDay() - wish.ideal().toEpochDay());
                    return Optional.of(new SpaceOffer(mat, place, number, slot, warm, asked, shift));
                }
            }
        }
        return Optional.empty();
    }

    /** The set-point fixed that day; else as the mat stands ready, or its usual one. */
    private double wanted(MatSpace mat, LocalDate start) {
        return board.setPoint(mat.id(), start)
                .orElse(board.readyAt(mat.id(), start).orElse(mat.usualC()));
    }

    private LocalDate firstDay(SpaceWish wish) {
        return wish.earliest().isBefore(today) ? today : wish.earliest();
    }

    private List<LocalDate> startsNearestFirst(SpaceWish wish) {
        List<LocalDate> starts = new ArrayList<>();
        firstDay(wish)
                .datesUntil(
                        wish.latest().plusDays(1).isAfter(firstDay(wish))
                                ? wish.latest().plusDays(1)
                                : firstDay(wish))
                .forEach(starts::add);
        starts.sort(Comparator.comparingLong(
                (LocalDate start) -> Math.abs(start.toEpochDay() - wish.ideal().toEpochDay())));
        return starts;
    }
}
