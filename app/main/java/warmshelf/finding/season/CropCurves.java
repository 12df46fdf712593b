package warmshelf.finding.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import warmshelf.crop.Method;
import warmshelf.finding.CountTrouble;
import warmshelf.finding.CountedSeeds;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.SproutingTime;
import warmshelf.seed.Spelling;
import warmshelf.words.Units;

/**
 * One crop's sowings of a season, put together by what they have in common.
 *
 * @param groups each with its seeds; roots in bags and seedlings in cells never in one
 * @param oneName pairs of varieties whose names are nearly one, so that they may be one under two names
 * @param troubled sowings whose counts are withheld, or to be taken with care
 */
record CropCurves(List<Group> groups, List<Pair> oneName, List<Troubled> troubled) {
    /** Two names of varieties. */
    record Pair(String first, String second) {}

    /** By what sowings are put together. */
    enum By {
        METHOD("method"),
        LOT("lot"),
        WARMTH("warmth"),
        SOWING("sowing");

        private final String word;

        By(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Sowings of one kind; counted roots of bags or seedlings in cells. */
    record Group(String name, int sowings, Arm seeds) {}

    /** A sowing and what is wrong with its counts. */
    record Troubled(SeasonSowing sowing, Set<CountTrouble> troubles) {}

    static CropCurves of(List<SeasonSowing> ofCrop, By by, Units units) {
        Map<String, List<CountedSeeds>> alike = new TreeMap<>();
        List<Troubled> troubled = new ArrayList<>();
        for (SeasonSowing sowing : ofCrop) {
            if (!sowing.isSown()) {
                continue;
            }
            CountedSeeds counted = sowing.counted();
            if (!counted.troubles().isEmpty()) {
                troubled.add(new Troubled(sowing, counted.troubles()));
            }
            if (counted.given()) {
                alike.computeIfAbsent(name(by, units).apply(sowing), key -> new ArrayList<>())
                        .add(counted);
            }
        }
        List<Group> groups = alike.entrySet().stream()
                .map(each -> new Group(each.getKey(), each.getValue().size(), arm(each.getKey(), each.getValue())))
                .toList();
        return new CropCurves(groups, oneName(ofCrop), troubled);
    }

    private static List<Pair> oneName(List<SeasonSowing> ofCrop) {
        List<String> names =
                ofCrop.stream().map(CropCurves::variety).distinct().sorted().toList();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (String later : names.subList(i + 1, names.size())) {
                if (Spelling.meant(names.get(i), later) && Spelling.meant(later, names.get(i))) {
                    pairs.add(new Pair(names.get(i), later));
                }
            }
        }
        return pairs;
    }

    private static Arm arm(String name, List<CountedSeeds> counted) {
        List<SproutingTime> times =
                counted.stream().flatMap(each -> each.times().stream()).collect(Collectors.toList());
        return new Arm(name, times);
    }

    private static Function<SeasonSowing, String> name(By by, Units units) {
        return sowing -> {
            String method = sowing.sowing().method() == Method.BAG ? "bags, roots" : "cells, seedlings";
            return switch (by) {
                case METHOD -> method;
                case LOT -> "%s (%s)".formatted(sowing.lot(), method);
                case WARMTH -> "%s (%s)".formatted(warmth(sowing, units), method);
                case SOWING ->
                    "%s of %s (%s)"
                            .formatted(variety(sowing), sowing.sowing().grower().name(), method);
            };
        };
    }

    private static String variety(SeasonSowing sowing) {
        return sowing.sowing().variety().isEmpty()
                ? sowing.sowing().crop().name()
                : sowing.sowing().variety();
    }

    private static String warmth(SeasonSowing sowing, Units units) {
        Double meanC = sowing.meanC();
        return meanC == null ? "not on a mat" : units.temperature(Math.rint(meanC));
    }
}
