package warmshelf.plan;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import warmshelf.allocation.Answer;
import warmshelf.allocation.Band;
import warmshelf.allocation.Board;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Offer;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Wish;
import warmshelf.allocation.plan.DayRange;
import warmshelf.allocation.plan.FixedStay;
import warmshelf.allocation.plan.Mat;
import warmshelf.allocation.plan.PlacedStay;
import warmshelf.allocation.plan.PlanQuestion;
import warmshelf.allocation.plan.Refused;
import warmshelf.allocation.plan.Request;
import warmshelf.allocation.plan.SeasonPlan;
import warmshelf.allocation.plan.SetPointSpan;
import warmshelf.sowing.AskPlanner;
import warmshelf.web.DayWords;

/**
 * The plain way: everyone's first choice before anyone's second, each on the free place nearest to its ideal day, with no look
 * back. It promises nothing about how good the plan is; its bound is the number of requests.
 */
final class GreedyPlanner implements Planner {
    private static final Comparator<Request> FIRST_CHOICES_FIRST = Comparator.comparingInt(Request::choice)
            .thenComparing(Request::ideal)
            .thenComparing(Request::id);

    @Override
    public Found plan(
            PlanQuestion question, long seed, int seconds, Consumer<Progress> listener, BooleanSupplier cancelled) {
        Run run = new Run(question);
        long started = System.nanoTime();
        for (Request request :
                question.requests().stream().sorted(FIRST_CHOICES_FIRST).toList()) {
            run.answer(request);
            if (cancelled.getAsBoolean()) {
                break;
            }
        }
        SeasonPlan plan = run.plan();
        int most = question.requests().size();
        listener.accept(new Progress(plan, most, (System.nanoTime() - started) / 1e9));
        return new Found(plan, most, plan.placed().size() == most);
    }

    private static final class Run {
        private static final int LATER_DAYS = 28;
        private static final int ANY_NUMBER = 1_000;

        private final PlanQuestion question;
        private final Map<String, Mat> mats;
        private final Map<UUID, Mat> matById = new HashMap<>();
        private final Map<LocalDate, Set<Mat>> warmed = new HashMap<>();
        private final Board board;
        private final FirstFit firstFit;
        private final List<PlacedStay> placed = new ArrayList<>();
        private final Map<String, Refused> refused = new HashMap<>();

        Run(PlanQuestion question) {
            this.question = question;
            mats = question.mats().stream().collect(Collectors.toMap(Mat::id, mat -> mat));
            DayRange days = question.days();
            board = new Board(
                    days.from(),
                    days.to(),
                    question.mats().stream().map(this::space).toList());
            question.mats()
                    .forEach(mat -> mat.out()
                            .forEach(out -> places(mat)
                                    .forEach(place -> board.take(place, new Slot(1, 4), out.from(), out.to()))));
            question.fixed().forEach(this::lay);
            firstFit = new FirstFit(board, days.from());
        }

        private MatSpace space(Mat mat) {
            UUID id = id(mat.id());
            matById.put(id, mat);
            int usual = (mat.thermostat().lowC() + mat.thermostat().highC()) / 2;
            return new MatSpace(id, mat.id(), "", mat.thermostat(), usual, places(mat));
        }

        private static List<UUID> places(Mat mat) {
            return IntStream.rangeClosed(1, mat.places())
                    .mapToObj(place -> id(mat.id() + "|" + place))
                    .toList();
        }

        private static UUID id(String name) {
            return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        }

        private void lay(FixedStay stay) {
            Mat mat = mats.get(stay.surface());
            Band band = stay.band();
            if (stay.lit() || mat == null || band == null) {
                return;
            }
            board.take(
                    places(mat).get(stay.place() - 1),
                    stay.slot(),
                    stay.days().from(),
                    stay.days().to());
            LocalDate first = later(stay.days().from(), question.days().from());
            first.datesUntil(later(first, stay.days().to())).forEach(day -> {
                warm(mat, day);
                int celsius = commonDegree(mat, band, day);
                board.setPoint(id(mat.id()), day, day.plusDays(1), celsius);
            });
        }

        /** What lies there already on that day bears it too. */
        private int commonDegree(Mat mat, Band band, LocalDate day) {
            int low = Math.max(band.lowC(), mat.thermostat().lowC());
            int high = band.highC();
            for (FixedStay other : question.fixed()) {
                if (other.surface().equals(mat.id())
                        && other.band() != null
                        && other.days().contains(day)) {
                    low = Math.max(low, other.band().lowC());
                    high = Math.min(high, other.band().highC());
                }
            }
            return Math.min(low, Math.max(high, band.lowC()));
        }

        void answer(Request request) {
            if (request.latest().isBefore(question.days().from())) {
                refuse(
                        request,
                        "Its last sensible day to start, %s, has passed.".formatted(DayWords.day(request.latest())),
                        "");
                return;
            }
            Wish wish = wish(request, request.latest());
            Optional<Offer> found = firstFit.offers(wish, ANY_NUMBER).stream()
                    .filter(this::withinCircuits)
                    .findFirst();
            if (found.isPresent()) {
                accept(request, found.get());
                return;
            }
            Answer answer = firstFit.answer(wish);
            String reason = answer instanceof Answer.None none
                    ? AskPlanner.sentence(none.reason())
                    : "The circuit of every mat with room for it is full on those days.";
            refuse(request, reason, laterStart(request));
        }

        /** The one cheap change looked for: a start after its latest day. */
        private String laterStart(Request request) {
            Wish later = wish(request, request.latest().plusDays(LATER_DAYS));
            return firstFit.offers(later, ANY_NUMBER).stream()
                    .filter(this::withinCircuits)
                    .filter(offer -> offer.from().isAfter(request.latest()))
                    .findFirst()
                    .map(offer -> "A start on %s, %d days after its latest, would give it a place on mat %s."
                            .formatted(
                                    DayWords.day(offer.from()),
                                    offer.from().toEpochDay() - request.latest().toEpochDay(),
                                    offer.mat().name()))
                    .orElse("");
        }

        private Wish wish(Request request, LocalDate latest) {
            LocalDate earliest = later(request.earliest(), question.days().from());
            return new Wish(
                    id(request.id()),
                    request.quarters(),
                    earliest,
                    later(request.ideal(), earliest),
                    latest,
                    request.band(),
                    celsius -> days(request, celsius));
        }

        private static int days(Request request, int celsius) {
            OptionalInt days = request.daysAt(celsius);
            // A set-point that does not suit is asked too long a stay, which no board holds.
            return days.orElse(ANY_NUMBER);
        }

        private boolean withinCircuits(Offer offer) {
            Mat mat = matById.get(offer.mat().id());
            return mat == null
                    || mat.circuit() == null
                    || offer.from().datesUntil(offer.to()).allMatch(day -> holds(mat, mat.circuit(), day));
        }

        private boolean holds(Mat more, String circuit, LocalDate day) {
            Set<Mat> all = new HashSet<>(warmed.getOrDefault(day, Set.of()));
            all.add(more);
            int load = all.stream()
                    .filter(mat -> circuit.equals(mat.circuit()))
                    .mapToInt(Mat::watts)
                    .sum();
            return question.circuits().stream()
                    .filter(feed -> feed.id().equals(circuit))
                    .allMatch(feed -> load <= feed.rating().continuousWatts());
        }

        private void accept(Request request, Offer offer) {
            board.accept(offer);
            Mat mat = matById.get(offer.mat().id());
            if (mat != null) {
                offer.from().datesUntil(offer.to()).forEach(day -> warm(mat, day));
            }
            placed.add(new PlacedStay(
                    request.id(),
                    offer.mat().name(),
                    offer.placeNumber(),
                    offer.slot(),
                    new DayRange(offer.from(), offer.to()),
                    null));
        }

        private void warm(Mat mat, LocalDate day) {
            warmed.computeIfAbsent(day, none -> new HashSet<>()).add(mat);
        }

        private void refuse(Request request, String reason, String change) {
            refused.put(request.id(), new Refused(request.id(), reason, change));
        }

        SeasonPlan plan() {
            Set<String> have = placed.stream().map(PlacedStay::request).collect(Collectors.toSet());
            List<Refused> without = question.requests().stream()
                    .filter(request -> !have.contains(request.id()))
                    .map(request -> refused.getOrDefault(
                            request.id(),
                            new Refused(request.id(), "The run was stopped before it came to this request.", "")))
                    .toList();
            SetPointDays setPoints = new SetPointDays(question, List.<SetPointSpan>of());
            question.mats()
                    .forEach(mat -> question.days()
                            .from()
                            .datesUntil(question.days().to())
                            .forEach(day -> board.setPoint(id(mat.id()), day)
                                    .ifPresent(celsius ->
                                            setPoints.fill(mat.id(), new DayRange(day, day.plusDays(1)), celsius))));
            setPoints.keepTo(question.fixed(), placed);
            return new SeasonPlan(placed, setPoints.spans(), without);
        }

        private static LocalDate later(LocalDate one, LocalDate other) {
            return one.isBefore(other) ? other : one;
        }
    }
}
