package warmshelf.guide;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What the guide tells of, in the order of a sowing; a step of the timeline has the same word here as there. */
public enum Topic {
    SEED_TEST("seed-test", "Test ten seeds", "Is old seed still good?", RecordArticles::seedTest),
    SOAK("soak", "Soak the seed", "A night in water, optional; what is known of peroxide", SoakArticle::of),
    LABELS("labels", "Label it", "Before anything else", RecordArticles::labels),
    SOW("sow", "Sow", "In cells, or in a bag of damp paper", SowArticles::sow),
    COVERING("covering", "Cover the seed", "How deep, and what stays on the surface", SowArticles::covering),
    BOTTOM_HEAT("bottom-heat", "Warmth from below", "Mats, probes and set-points", WarmthArticles::bottomHeat),
    WATERING("watering", "Water from below", "When, and how long", WaterArticles::watering),
    FIRST_LOOK("first-look", "Look every day", "What to look for in bags and cells", LookArticles::look),
    DAMPING_OFF("damping-off", "Damping-off", "When seedlings fall over", WaterArticles::dampingOff),
    MOVE_TO_CELLS("move-to-cells", "Move into cells", "From the bag, once a root shows", LookArticles::moveToCells),
    OFF_HEAT("off-heat", "Off the heat", "The day most of it is up", WarmthArticles::offHeat),
    LIGHT("light", "Under the light", "How near, how long, how much", LightArticle::of),
    FIRST_FEED("first-feed", "First feed", "When, and how weak", FeedArticle::of),
    POT_ON("pot-on", "Pot on", "From the cell into a pot", GrowArticles::potOn),
    HARDEN_OFF("harden-off", "Harden off", "A week or so outside, bit by bit", GrowArticles::hardenOff),
    PLANT_OUT("plant-out", "Plant out", "When nights allow it", GrowArticles::plantOut),
    RIPE("ripe", "First harvest", "What to note, and seed to keep", GrowArticles::ripe);

    private final String word;
    private final String title;
    private final String about;
    // Each is a reference to a static method.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<Figures, Article> article;

    Topic(String word, String title, String about, Function<Figures, Article> article) {
        this.word = word;
        this.title = title;
        this.about = about;
        this.article = article;
    }

    static Optional<Topic> find(String word) {
        return Arrays.stream(values()).filter(topic -> topic.word.equals(word)).findFirst();
    }

    static List<Topic> all() {
        return List.of(values());
    }

    /** Its word in addresses. */
    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    /** What its page tells, in a few words. */
    public String about() {
        return about;
    }

    Article article(Figures figures) {
        return article.apply(figures);
    }
}
