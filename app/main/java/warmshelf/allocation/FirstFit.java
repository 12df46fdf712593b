package warmshelf.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;

/**
 * The quick answer at the counter: for one request the free space nearest to its ideal day, and for several of them first
 * fit in the order of their ideal days.
 */
public final class FirstFit {
    /** Of two mats with room on the same day the one that need not be turned far from its usual set-point. */
    private static final Comparator<Offer> NEAREST_TO_IDEAL = Comparator.comparingInt(
                    (Offer offer) -> Math.abs(offer.shiftDays()))
            .thenComparing(Offer::from)
            .thenComparingInt(offer -> Math.abs(offer.celsius() - offer.mat().usualC()));

    private final Board board;
    private final LocalDate today;

    public FirstFit(Board board, LocalDate today) {
        this.board = board;
        this.today = today;
    }

    /** The best offer of each mat, nearest to the ideal day first. */
    public List<Offer> offers(Wish wish, int atMost) {
        List<Offer> offers = new ArrayList<>();
        board.mats().forEach(mat -> bestOn(mat, wish).ifPresent(offers::add));
        offers.sort(NEAREST_TO_IDEAL);
        return offers.subList(0, Math.min(atMost, offers.size()));
    }

    /** The best offer, or the true reason why there is none. */
    public Answer answer(Wish wish) {
        List<Offer> offers = offers(wish, 1);
        return offers.isEmpty() ? new Answer.None(reason(wish)) : new Answer.Space(offers.get(0));
    }

    /** Answers many requests, the earliest ideal day first; each accepted offer is taken before the next is sought. */
    public Map<UUID, Answer> answerAll(List<Wish> wishes) {
        Map<UUID, Answer> answers = new LinkedHashMap<>();
        List<Wish> inOrder = new ArrayList<>(wishes);
        inOrder.sort(Comparator.comparing(Wish::ideal).thenComparing(Wish::sowingId));
        for (Wish wish : inOrder) {
            Answer answer = answer(wish);
            if (answer instanceof Answer.Space space) {
                board.accept(space.offer());
            }
            answers.put(wish.sowingId(), answer);
        }
        return answers;
    }

    private NoSpace reason(Wish wish) {
        if (wish.latest().isBefore(today)) {
            return new NoSpace.TooLate(wish.latest());
        }
        boolean anyInBand =
                board.mats().stream().anyMatch(mat -> mat.thermostat().overlaps(wish.band()));
        return anyInBand ? new NoSpace.Full(firstDay(wish), wish.latest()) : new NoSpace.NoMatInBand(wish.band());
    }

    private Optional<Offer> bestOn(MatSpace mat, Wish wish) {
        if (!mat.thermostat().overlaps(wish.band())) {
            return Optional.empty();
        }
        for (LocalDate start : startsNearestFirst(wish)) {
            Optional<Offer> offer = startingOn(mat, wish, start);
            if (offer.isPresent()) {
                return offer;
            }
        }
        return Optional.empty();
    }

    private Optional<Offer> startingOn(MatSpace mat, Wish wish, LocalDate start) {
        for (int celsius : candidateSetPoints(mat, wish, start)) {
            LocalDate end = start.plusDays(wish.daysAt().applyAsInt(celsius));
            if (board.canHold(mat.id(), celsius, start, end)) {
                Optional<Offer> offer = freePlace(mat, wish, start, end, celsius);
                if (offer.isPresent()) {
                    return offer;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Offer> freePlace(MatSpace mat, Wish wish, LocalDate start, LocalDate end, int celsius) {
        // The fullest place first: bags gather in one place and leave whole ones for trays.
        List<UUID> places = new ArrayList<>(mat.places());
        places.sort(Comparator.comparingInt((UUID place) -> -board.takenQuarters(place, start)));
        for (UUID place : places) {
            for (Slot slot : Slot.of(wish.quarters())) {
                if (board.isFree(place, slot, start, end)) {
                    int number = mat.places().indexOf(place) + 1;
                    int shift = (int) (start.toEpochDay() - wish.ideal().toEpochDay());
                    return Optional.of(new Offer(mat, place, number, slot, start, end, celsius, shift));
                }
            }
        }
        return Optional.empty();
    }

    /** Each set-point that suits seed and mat: the one fixed that day first, else those nearest to the mat's usual one. */
    private List<Integer> candidateSetPoints(MatSpace mat, Wish wish, LocalDate start) {
        int wanted = board.setPoint(mat.id(), start).orElse(mat.usualC());
        int low = Math.max(mat.thermostat().lowC(), wish.band().lowC());
        int high = Math.min(mat.thermostat().highC(), wish.band().highC());
        return IntStream.rangeClosed(low, high)
                .boxed()
                .sorted(Comparator.comparingInt(celsius -> Math.abs(celsius - wanted)))
                .toList();
    }

    private LocalDate firstDay(Wish wish) {
        return wish.earliest().isBefore(today) ? today : wish.earliest();
    }

    private List<LocalDate> startsNearestFirst(Wish wish) {
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
