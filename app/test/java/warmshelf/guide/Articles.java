package warmshelf.guide;

import java.util.List;
import java.util.stream.Stream;
import warmshelf.words.Units;

/** The guide's pages for readers of each kind of units, and their text. */
final class Articles {
    static final Units US = new Units("F", "in");
    static final Units METRIC = Units.METRIC;

    private Articles() {}

    static Figures figures(Units units) {
        return new Figures(units, PracticeTable.bundled(), new ContainerTable());
    }

    static Article of(Topic topic, Units units) {
        return topic.article(figures(units));
    }

    static List<Claim> claims(Units units) {
        return Topic.all().stream().flatMap(topic -> claims(of(topic, units))).toList();
    }

    static Stream<Claim> claims(Article article) {
        return comparisons(article).flatMap(comparison -> comparison.claims().stream());
    }

    static Stream<Comparison> comparisons(Article article) {
        return article.sections().stream().flatMap(section -> section.comparisons().stream());
    }

    static Comparison comparison(Topic topic, Units units, String title) {
        return comparisons(of(topic, units))
                .filter(comparison -> comparison.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    /** All that a page says, but for its sources. */
    static String text(Topic topic, Units units) {
        Article article = of(topic, units);
        return String.join(
                "\n",
                Stream.of(
                                Stream.of(article.lead()),
                                article.sections().stream().map(Section::heading),
                                article.sections().stream().flatMap(section -> section.notes().stream()),
                                article.sections().stream().flatMap(section -> section.steps().stream()),
                                comparisons(article)
                                        .map(each -> each.title() + " " + each.verdict() + " " + each.ours()),
                                claims(article).map(claim -> claim.of() + ": " + claim.says()),
                                article.hazards().stream().map(Hazard::caution))
                        .flatMap(lines -> lines)
                        .toList());
    }
}
