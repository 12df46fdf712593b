package warmshelf.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.words.Texts;
import warmshelf.words.Units;

/** The guide's pages for readers of each kind of units, and their text. */
final class Articles {
    static final Units US = Units.AMERICAN;
    static final Units METRIC = Units.METRIC;

    private static final Texts TEXTS = new Texts("guide/en");

    private Articles() {}

    static Figures figures(Units units) {
        return Figures.in(units);
    }

    static Article of(Topic topic, Units units) {
        return Article.of(topic, Advice.in(units));
    }

    static List<Claim> claims(Units units) {
        return Topic.all().stream().flatMap(topic -> claims(topic, units)).toList();
    }

    static Stream<Claim> claims(Topic topic, Units units) {
        return comparisons(topic, units).stream().flatMap(comparison -> comparison.claims().stream());
    }

    static List<Comparison> comparisons(Topic topic, Units units) {
        Kept kept = new Kept();
        body(topic, units, kept);
        return kept.made;
    }

    static Comparison comparison(Topic topic, Units units, String title) {
        return comparisons(topic, units).stream()
                .filter(comparison -> comparison.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    /** The steps and tables as they go into the page. */
    static String body(Topic topic, Units units) {
        return body(topic, units, new Comparisons());
    }

    private static String body(Topic topic, Units units, Comparisons compare) {
        Map<String, Object> values = new HashMap<>(Advice.in(units).forArticles());
        values.putAll(Advice.in(units).forTemplates());
        values.put("compare", compare);
        return TEXTS.line(topic.file(), "body", values);
    }

    /** All that a page says, but for its sources. */
    static String text(Topic topic, Units units) {
        Article article = of(topic, units);
        return Stream.of(
                        Stream.of(article.lead(), body(topic, units).replaceAll("<[^>]+>", " ")),
                        claims(topic, units).map(claim -> claim.of() + ": " + claim.says()),
                        article.hazards().stream().map(Hazard::caution))
                .flatMap(lines -> lines)
                .collect(Collectors.joining("\n"));
    }

    /** Keeps what it makes. */
    private static final class Kept extends Comparisons {
        private final List<Comparison> made = new ArrayList<>();

        @Override
        public Comparison reckoned(String title, String by, List<Claim> claims, String ours) {
            return kept(super.reckoned(title, by, claims, ours));
        }

        @Override
        public Comparison told(String title, List<Claim> claims, String verdict, String ours) {
            return kept(super.told(title, claims, verdict, ours));
        }

        @Override
        public Comparison disagreeing(String title, List<Claim> claims, String how, String ours) {
            return kept(super.disagreeing(title, claims, how, ours));
        }

        private Comparison kept(Comparison comparison) {
            made.add(comparison);
            return comparison;
        }
    }
}
