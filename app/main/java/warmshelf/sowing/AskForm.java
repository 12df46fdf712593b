package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.seed.KeepingForm;
import warmshelf.seed.Lot;
import warmshelf.seed.SeedSource;
import warmshelf.seed.SeedsToACell;
import warmshelf.seed.Storage;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.FormReader;
import warmshelf.words.LengthUnit;
import warmshelf.words.Numbers;

/** Reads the asking for space as typed. A lot from the seed box settles the crop; a new packet is described here. */
final class AskForm {
    static final String NEW_PACKET = "new";
    /** Nobody chose how many seeds go to a cell. */
    static final int AS_ADVISED = 0;

    static final List<String> CELLS_IN_A_TRAY = List.of("18", "32", "36", "48", "50", "72", "98", "128", "200", "288");
    /** What nobody chose stands at. */
    static final int USUAL_CELLS = 72;

    private static final int MOST_PLANTS = 1000;
    private static final double LONGEST_SIDE_MM = 2000;

    private final FormReader reader;
    private final CropCatalogue crops;
    private final List<Lot> lots;
    private final LocalDate today;
    private final int season;
    private final LengthUnit unit;

    AskForm(
            Map<String, List<String>> typed,
            CropCatalogue crops,
            List<Lot> lots,
            LocalDate today,
            int season,
            LengthUnit unit) {
        this.reader = new FormReader(typed);
        this.crops = crops;
        this.lots = lots;
        this.today = today;
        this.season = season;
        this.unit = unit;
    }

    FormReader reader() {
        return reader;
    }

    /** What was asked, or empty when something typed cannot be taken; the reader then has the sentences. */
    Optional<Ask> ask() {
        Optional<Lot> lot = lotFromBox();
        Packet packet = lot.isPresent() ? null : packet();
        Method method = method();
        LocalDate underCoverOn = underCoverOn();
        Ask ask = new Ask(
                lot.orElse(null),
                packet,
                reader.wholeNumber("plants", SAY.plantsField(), 1, MOST_PLANTS),
                method,
                reader.text("heat").equals("warm"),
                underLight(),
                container(method),
                cellsInATray(),
                seedsPerCell(method),
                part(),
                risk(),
                underCoverOn,
                reader.ticked("acceptFewer"),
                reader.optionalText("note", SAY.noteField(), 400));
        reader.choice("heat", SAY.heatField(), List.of("warm", "room"));
        return reader.ok() ? Optional.of(ask) : Optional.empty();
    }

    private Optional<Lot> lotFromBox() {
        String typed = reader.text("lot");
        if (typed.equals(NEW_PACKET) || typed.isEmpty()) {
            return Optional.empty();
        }
        Optional<Lot> lot =
                lots.stream().filter(each -> each.id().toString().equals(typed)).findFirst();
        if (lot.isEmpty()) {
            reader.refuse("lot", SAY.lotGone());
        }
        lot.ifPresent(chosen -> {
            if (!reader.text("crop").isEmpty() && !reader.text("crop").equals(chosen.cropId())) {
                reader.refuse(
                        "crop",
                        SAY.otherCrop(cropName(reader.text("crop")), chosen.variety(), cropName(chosen.cropId())));
            }
        });
        return lot;
    }

    private String cropName(String id) {
        return crops.find(id).map(Crop::name).orElse(id);
    }

    private Packet packet() {
        String cropId = reader.text("crop");
        Optional<Crop> crop = crops.find(cropId).map(found -> crops.ofVariety(cropId, reader.text("variety")));
        if (crop.isEmpty()) {
            reader.refuse(
                    "crop", cropId.isEmpty() ? SAY.cropEmpty() : SAY.cropUnknown(cropId.length() > 40 ? "…" : cropId));
        }
        Optional<Integer> germinated = reader.optionalWholeNumber("germinated", SAY.germinatedField(), 0, 1000);
        Optional<Integer> tested = reader.optionalWholeNumber("tested", SAY.testedField(), 1, 1000);
        if (germinated.isPresent() != tested.isPresent()) {
            reader.refuse("tested", SAY.testNeedsBoth());
        } else if (tested.isPresent() && germinated.orElse(0) > tested.get()) {
            reader.refuse("germinated", SAY.moreSprouted(germinated.orElse(0), tested.get()));
        }
        return new Packet(
                crop.orElse(crops.fromSeed().get(0)),
                reader.requiredText("variety", SAY.varietyField(), 80),
                seedYear(),
                reader.optionalWholeNumber("packetSeeds", SAY.packetSeedsField(), 1, 100_000)
                        .orElse(null),
                germinated.orElse(null),
                tested.orElse(null),
                reader.ticked("treated"),
                KeepingForm.source(reader),
                KeepingForm.storageInWords(reader));
    }

    private int seedYear() {
        // Packets are packed for the coming season from late summer on.
        int newest = Math.max(season, today.getYear() + (today.getMonthValue() >= 7 ? 1 : 0));
        if (reader.text("seedYear").isEmpty()) {
            return today.getYear();
        }
        return reader.year("seedYear", SAY.seedYearField(), 1980, newest);
    }

    private Method method() {
        String word = reader.choice("method", SAY.methodField(), List.of(Method.CELLS.word(), Method.BAG.word()));
        return reader.problems().containsKey("method") ? Method.CELLS : Method.named(word);
    }

    /** Nothing chosen asks for no place under the lights. */
    private boolean underLight() {
        return !reader.text("after").isEmpty()
                && reader.choice("after", SAY.afterField(), List.of("light", "home"))
                        .equals("light");
    }

    private Container container(Method method) {
        if (method == Method.BAG) {
            return Container.BAG;
        }
        String word = reader.choice(
                "container", SAY.containerField(), List.of(Container.HALF_TRAY.word(), Container.TRAY.word(), "own"));
        if (!word.equals("own")) {
            return reader.problems().containsKey("container") ? Container.TRAY : Container.named(word);
        }
        int longSide = millimetres("trayLong", SAY.longerSideField(unit.inFull()));
        int shortSide = millimetres("trayShort", SAY.shorterSideField(unit.inFull()));
        if (!reader.ok()) {
            return Container.TRAY;
        }
        Optional<Container> fitting = new TraySize(longSide, shortSide).fits();
        if (fitting.isEmpty()) {
            reader.refuse(
                    "trayLong",
                    SAY.trayTooLarge(
                            shown(longSide),
                            shown(shortSide),
                            shown(TraySize.PLACE.longSideMm()),
                            shown(TraySize.PLACE.shortSideMm())));
        }
        return fitting.orElse(Container.TRAY);
    }

    private int millimetres(String field, String label) {
        double most = Math.floor(LONGEST_SIDE_MM / unit.millimetres());
        double typed = reader.decimal(field, label, 1, most);
        return (int) Math.round(typed * unit.millimetres());
    }

    private String shown(int millimetres) {
        return Numbers.oneDecimal(millimetres / unit.millimetres()) + " " + unit.word();
    }

    private int cellsInATray() {
        if (reader.text("cellsInATray").isEmpty()) {
            return USUAL_CELLS;
        }
        String word = reader.choice("cellsInATray", SAY.cellsInATrayField(), CELLS_IN_A_TRAY);
        return reader.problems().containsKey("cellsInATray") ? USUAL_CELLS : Integer.parseInt(word);
    }

    private int seedsPerCell(Method method) {
        // A pre-sprouted seed is known to be alive.
        if (method == Method.BAG) {
            return SeedsToACell.FEWEST;
        }
        return reader.text("seedsPerCell").isEmpty()
                ? AS_ADVISED
                : reader.wholeNumber("seedsPerCell", SAY.seedsPerCellField(), 1, 4);
    }

    /** Nothing chosen leaves it to the first part of the season that is still in time. */
    private @Nullable SeasonPart part() {
        if (reader.text("part").isEmpty()) {
            return null;
        }
        List<String> words =
                Arrays.stream(SeasonPart.values()).map(SeasonPart::word).toList();
        String word = reader.choice("part", SAY.partField(), words);
        return reader.problems().containsKey("part") ? null : SeasonPart.named(word);
    }

    private double risk() {
        if (reader.text("risk").isEmpty()) {
            return 0;
        }
        String word = reader.choice("risk", SAY.riskField(), List.of("0.5", "0.3", "0.1"));
        return reader.problems().containsKey("risk") ? 0 : Double.parseDouble(word);
    }

    private @Nullable LocalDate underCoverOn() {
        String where = reader.choice("where", SAY.whereField(), List.of("outdoors", "cover"));
        if (!where.equals("cover")) {
            return null;
        }
        LocalDate day = reader.date("coverOn", SAY.coverDayField());
        if (!reader.problems().containsKey("coverOn") && (day.isBefore(today) || day.isAfter(today.plusYears(2)))) {
            reader.refuse("coverOn", SAY.coverDayUnfit(day, today, today.plusYears(2)));
        }
        return day;
    }

    /**
     * An asking as typed and found good.
     *
     * @param seedsPerCell {@link #AS_ADVISED} where nobody chose
     * @param part for which part of the season; null: nobody chose
     */
    record Ask(
            @Nullable Lot lot,
            @Nullable Packet packet,
            int plants,
            Method method,
            boolean warm,
            boolean underLight,
            Container container,
            int cellsInATray,
            int seedsPerCell,
            @Nullable SeasonPart part,
            double chosenRisk,
            @Nullable LocalDate underCoverOn,
            boolean acceptFewer,
            String note) {

        /** The same with so many seeds to a cell. */
        Ask withSeedsPerCell(int seeds) {
            return new Ask(
                    lot,
                    packet,
                    plants,
                    method,
                    warm,
                    underLight,
                    container,
                    cellsInATray,
                    seeds,
                    part,
                    chosenRisk,
                    underCoverOn,
                    acceptFewer,
                    note);
        }

        /** The variety of the lot or packet. */
        public String variety() {
            return lot != null ? lot.variety() : packet == null ? "" : packet.variety();
        }

        /** Whether the seed carries a pesticide. */
        public boolean treated() {
            return lot != null ? lot.treated() : packet != null && packet.treated();
        }
    }

    /** A packet that is not in the seed box yet. */
    record Packet(
            Crop crop,
            String variety,
            int year,
            @Nullable Integer seeds,
            @Nullable Integer germinated,
            @Nullable Integer tested,
            boolean treated,
            SeedSource source,
            Storage storage) {}
}
