package warmshelf.plan.engine.search;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.LitShelf;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.Request;

/**
 * The question in numbers, for the search's inner loops. Surfaces are the mats, in order, and after them the lit shelves;
 * days count from the first day of the plan.
 */
final class IndexedQuestion {
    final PlanQuestion question;
    final int days;
    final int mats;
    final int[] places;
    /** By mat and day, the set-points the thermostat can hold; no bit on a day out of service. */
    final long[][] thermostat;

    /** By mat, whether no light reaches it. */
    final boolean[] dark;

    final int[] watts;
    /** By mat, the circuit; -1 where its load can never matter. */
    final int[] circuit;

    final int[] continuousWatts;
    final List<IndexedRequest> asks = new ArrayList<>();
    /** Distinct choice numbers. */
    final int ranks;
    /** Pairs of a member and a choice. */
    final int members;

    IndexedQuestion(PlanQuestion question) {
        this.question = question;
        days = question.days().length();
        mats = question.mats().size();
        List<LitShelf> lit = question.litShelves() == null ? List.of() : question.litShelves();
        places = new int[mats + lit.size()];
        dark = new boolean[mats];
        watts = new int[mats];
        circuit = new int[mats];
        thermostat = new long[mats][days];
        for (int mat = 0; mat < mats; mat++) {
            describe(mat, question.mats().get(mat));
        }
        for (int shelf = 0; shelf < lit.size(); shelf++) {
            places[mats + shelf] = lit.get(shelf).places();
        }
        continuousWatts = question.circuits().stream()
                .mapToInt(feed -> feed.rating().continuousWatts())
                .toArray();
        forgetAmpleCircuits();
        List<Integer> choices = new ArrayList<>(
                new TreeSet<>(question.requests().stream().map(Request::choice).toList()));
        ranks = choices.size();
        Map<String, Integer> pairs = new HashMap<>();
        for (Request request : question.requests()) {
            String pair = request.choice() + "|" + request.member();
            int member = pairs.computeIfAbsent(pair, next -> pairs.size());
            asks.add(ask(request, member, choices.indexOf(request.choice())));
        }
        members = pairs.size();
    }

    int day(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(question.days().from(), date);
    }

    DayRange range(int from, int to) {
        LocalDate first = question.days().from();
        return new DayRange(first.plusDays(from), first.plusDays(to));
    }

    /** A request as the search sees it; also one that is only thought of, to see whether it would fit. */
    IndexedRequest ask(Request request, int member, int rank) {
        return new IndexedRequest(
                asks.size(),
                request.quarters(),
                StayOption.of(request).toArray(new StayOption[0]),
                Math.max(0, day(request.earliest())),
                day(request.ideal()),
                Math.min(days - 1, day(request.latest())),
                member,
                rank,
                request.needsLight(),
                question.litShelves() == null ? null : request.light());
    }

    /** Whether a mat is not dark to a request. */
    boolean sees(IndexedRequest ask, int mat) {
        return !ask.needsLight() || !dark[mat];
    }

    Map<String, Integer> matIndex() {
        Map<String, Integer> index = new LinkedHashMap<>();
        question.mats().forEach(mat -> index.put(mat.id(), index.size()));
        return index;
    }

    @Nullable
    Integer litIndex(String shelf) {
        List<LitShelf> lit = question.litShelves() == null ? List.of() : question.litShelves();
        for (int i = 0; i < lit.size(); i++) {
            if (lit.get(i).id().equals(shelf)) {
                return mats + i;
            }
        }
        return null;
    }

    private void describe(int index, PlannedMat mat) {
        places[index] = mat.places();
        dark[index] = mat.light().isDark();
        watts[index] = mat.watts();
        circuit[index] = -1;
        for (int feed = 0; feed < question.circuits().size(); feed++) {
            if (question.circuits().get(feed).id().equals(mat.circuit())) {
                circuit[index] = feed;
            }
        }
        for (int day = 0; day < days; day++) {
            LocalDate date = question.days().from().plusDays(day);
            thermostat[index][day] = mat.servesOn(date) ? StayOption.degrees(mat.thermostat()) : 0;
        }
    }

    /** A circuit that carries all its mats at once need not be watched. */
    private void forgetAmpleCircuits() {
        long[] most = new long[continuousWatts.length];
        for (int mat = 0; mat < mats; mat++) {
            if (circuit[mat] >= 0) {
                most[circuit[mat]] += watts[mat];
            }
        }
        for (int mat = 0; mat < mats; mat++) {
            if (circuit[mat] >= 0 && most[circuit[mat]] <= continuousWatts[circuit[mat]]) {
                circuit[mat] = -1;
            }
        }
    }
}
