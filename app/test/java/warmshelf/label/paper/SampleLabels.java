package warmshelf.label.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Labels of an invented group. */
public final class SampleLabels {
    /** As a group's own address runs, with a short code of ours. */
    public static final String ADDRESS = "HTTPS://SEEDS.EXAMPLE.ORG/C/K7P4MX";

    private SampleLabels() {}

    /** All that can stand on a label. */
    public static LabelText full() {
        return of("K7P 4MX", ADDRESS, "Lantern Row Early", "Tom");
    }

    /** The same of a variety and a grower. */
    public static LabelText of(String code, String address, String variety, String grower) {
        List<String> varieties = List.of("Lantern Row Early", "Lantern Row Late", "Ore Dock Sweet");
        Map<LabelPart.Kind, List<String>> parts = Map.of(
                LabelPart.Kind.VARIETY, TellingForms.forms(variety, "Pepper, sweet and mild hot", varieties),
                LabelPart.Kind.TRIAL, List.of("trial 3 way B", "3B"),
                LabelPart.Kind.GROWER, TellingForms.person(grower),
                LabelPart.Kind.DATE, List.of("sown 2 Mar 2027", "2 Mar 2027", "2 Mar"),
                LabelPart.Kind.CROP, TellingForms.crop("Pepper, sweet and mild hot"),
                LabelPart.Kind.LOT, List.of("lot 2026"));
        List<LabelPart> all = new ArrayList<>();
        parts.forEach((kind, forms) -> all.add(new LabelPart(kind, forms)));
        return new LabelText(code, address, all);
    }
}
