package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.garden.Thermometer;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The form that sends a table: what it is, whose the lots are, of which thermometer the nights. */
public final class IncomingForm {
    static final int MOST_MB = 20;
    private static final long MOST_BYTES = MOST_MB * 1_000_000L;

    private final FormReader reader;
    private final IncomingKind kind;
    private final List<Thermometer> thermometers;
    private final boolean coordinator;

    /** @param thermometers of which the person may note nights */
    private IncomingForm(FormReader reader, IncomingKind kind, List<Thermometer> thermometers, boolean coordinator) {
        this.reader = reader;
        this.kind = kind;
        this.thermometers = thermometers;
        this.coordinator = coordinator;
    }

    static IncomingForm blank(IncomingKind kind, List<Thermometer> thermometers, boolean coordinator) {
        String first = thermometers.size() == 1 ? thermometers.get(0).id().toString() : "";
        return new IncomingForm(
                new FormReader(
                        Map.of("kind", List.of(kind.word()), "whose", List.of("mine"), "thermometer", List.of(first))),
                kind,
                thermometers,
                coordinator);
    }

    /**
     * The form as it was sent.
     *
     * @param bytes of the file; null: none was chosen
     */
    static IncomingForm of(
            Map<String, List<String>> typed,
            IncomingKind kind,
            List<Thermometer> thermometers,
            boolean coordinator,
            @Nullable Long bytes) {
        IncomingForm form = new IncomingForm(new FormReader(typed), kind, thermometers, coordinator);
        if (kind == IncomingKind.LOTS) {
            form.reader.choice(
                    "whose",
                    SAY.whoseLabel(),
                    form.getOwners().stream().map(Choice::value).toList());
        }
        if (kind == IncomingKind.NIGHTS && form.nightsOf().isEmpty()) {
            form.reader.refuse("thermometer", SAY.thermometerMissing());
        }
        if (bytes == null) {
            form.reader.refuse("file", SAY.fileMissing());
        } else if (bytes > MOST_BYTES) {
            form.reader.refuse("file", SAY.fileTooLarge(bytes / 1_000_000, MOST_MB));
        }
        return form;
    }

    boolean ok() {
        return reader.ok();
    }

    IncomingOrder.Whose whose() {
        for (IncomingOrder.Whose whose : IncomingOrder.Whose.values()) {
            if (whose.word().equals(reader.text("whose"))) {
                return whose;
            }
        }
        return IncomingOrder.Whose.MINE;
    }

    /** The thermometer that was chosen, where there are any to choose from. */
    Optional<IncomingOrder.NightsOf> nightsOf() {
        return thermometers.stream()
                .filter(each -> each.id().toString().equals(reader.text("thermometer")))
                .findFirst()
                .map(each -> new IncomingOrder.NightsOf(each.id(), each.name()));
    }

    public IncomingKind getKind() {
        return kind;
    }

    /** Whose the lots can be. */
    public List<Choice> getOwners() {
        List<Choice> owners = new ArrayList<>(List.of(
                new Choice(IncomingOrder.Whose.MINE.word(), SAY.ownerMine()),
                new Choice(IncomingOrder.Whose.GROUP.word(), SAY.ownerGroup())));
        if (coordinator) {
            owners.add(new Choice(IncomingOrder.Whose.COLUMN.word(), SAY.ownerColumn()));
        }
        return owners;
    }

    public List<Choice> getThermometers() {
        return thermometers.stream()
                .map(each -> new Choice(each.id().toString(), each.name()))
                .toList();
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
