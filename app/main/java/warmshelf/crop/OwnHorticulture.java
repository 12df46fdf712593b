package warmshelf.crop;

import java.util.List;

/** What the group itself wrote of crops and their varieties. */
public record OwnHorticulture(List<OwnCrop> crops, List<Variety> varieties) {
    public static final OwnHorticulture NONE = new OwnHorticulture(List.of(), List.of());
}
