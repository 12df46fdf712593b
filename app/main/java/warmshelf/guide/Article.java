package warmshelf.guide;

import java.util.List;

/**
 * How one step is done, for one reader.
 *
 * @param lead the step in a sentence or two
 * @param hazards what can hurt someone at it; may be empty
 * @param related what to read beside it
 */
public record Article(String lead, List<Section> sections, List<Hazard> hazards, List<Topic> related) {
    public Article {
        sections = List.copyOf(sections);
        hazards = List.copyOf(hazards);
        related = List.copyOf(related);
    }
}
