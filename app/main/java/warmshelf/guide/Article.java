package warmshelf.guide;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;

/**
 * How one step is done.
 *
 * @param lead the step in a sentence or two
 * @param body the address of the steps and tables, for a page to take in
 * @param hazards what can hurt someone at it; may be empty
 * @param related what to read beside it
 */
public record Article(String lead, String body, List<Hazard> hazards, List<Topic> related) {
    public Article {
        hazards = List.copyOf(hazards);
        related = List.copyOf(related);
    }

    static Article of(Topic topic, Advice advice) {
        String file = topic.file();
        return new Article(
                advice.say(file, "lead"),
                Advice.address(file, "body"),
                Advice.list(file, "cautions").stream().map(Hazard::named).toList(),
                Advice.list(file, "read beside").stream().map(Topic::named).toList());
    }

    /** The hazards that need no line before the steps. */
    public List<Hazard> besides() {
        return hazards.stream().filter(hazard -> hazard.brief().isEmpty()).toList();
    }

    /** The same, with what of a crop can hurt someone before the rest, and without what only other crops do. */
    Article of(Crop crop) {
        Set<Hazard> all = new LinkedHashSet<>();
        Arrays.stream(CropHazard.values())
                .filter(crop.hazards()::contains)
                .forEach(hazard -> all.add(Hazard.of(hazard)));
        hazards.stream().filter(hazard -> !hazard.isOfSomeCrops()).forEach(all::add);
        return new Article(lead, body, List.copyOf(all), related);
    }
}
