package warmshelf.guide;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;

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

    /** The same, with what of a crop can hurt someone before the rest. */
    Article of(Crop crop) {
        Set<Hazard> all = new LinkedHashSet<>();
        Arrays.stream(CropHazard.values())
                .filter(crop.hazards()::contains)
                .forEach(hazard -> all.add(Hazard.of(hazard)));
        all.addAll(hazards);
        return new Article(lead, sections, List.copyOf(all), related);
    }
}
