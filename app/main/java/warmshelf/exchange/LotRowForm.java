package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.Given;
import warmshelf.crop.CropCatalogue;
import warmshelf.group.Member;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotForm;
import warmshelf.seed.NewLot;
import warmshelf.seed.TestForm;
import warmshelf.table.TableRow;
import warmshelf.words.Units;

/** Reads a row as {@link LotForm} and {@link TestForm} read what is typed on the pages of the seed box. */
final class LotRowForm {
    private static final Pattern TEST = Pattern.compile("(\\S+)\\s+(\\d{1,6})\\s*/\\s*(\\d{1,6})");
    private static final Pattern BETWEEN_TESTS = Pattern.compile("\\s*[,;]?\\s*");

    /** The fields of the form by the columns of the table. */
    private static final Map<String, String> FIELDS = Map.of(
            "variety", "variety",
            "year", "year",
            "seeds_left", "seeds",
            "note", "note",
            "source", "source",
            "storage", "storage",
            "storage_celsius", "storageTemperature",
            "storage_moisture_percent", "storageMoisture",
            "crop", "crop");

    private final CropCatalogue crops;
    private final CropNames names;
    private final IncomingOrder order;
    private final Map<String, UUID> owners;
    private final Map<String, Integer> alike = new HashMap<>();

    /** @param owners people who may own lots, by the key of their name */
    LotRowForm(CropCatalogue crops, IncomingOrder order, Map<String, UUID> owners) {
        this.crops = crops;
        this.order = order;
        this.owners = owners;
        this.names = new CropNames(crops);
    }

    /** A lot with its tests, under the id that it will have. */
    record Read(UUID id, NewLot lot, List<GerminationTest> tests) {}

    /** The lot of a row; null where it has troubles, which are added. */
    @Nullable
    Read read(TableRow row, List<RowTrouble> troubles) {
        UUID owner = owner(row, troubles);
        Map<String, List<String>> typed = typed(row, owner, troubles);
        LotForm form = LotForm.of(typed, crops, order.latestYear(), owner == null ? order.by() : owner, Units.METRIC);
        form.problems().forEach((field, sentence) -> {
            String column = column(field);
            if (troubles.stream().noneMatch(trouble -> trouble.column().equals(column))) {
                troubles.add(new RowTrouble(row.number(), column, sentence));
            }
        });
        List<GerminationTest> tests = tests(row, troubles);
        UUID id = id(row, troubles);
        if (!troubles.isEmpty() || form.lot().isEmpty()) {
            return null;
        }
        NewLot lot = form.lot().get();
        return new Read(id == null ? made(lot, tests) : id, lot, tests);
    }

    private Map<String, List<String>> typed(TableRow row, @Nullable UUID owner, List<RowTrouble> troubles) {
        Map<String, List<String>> typed = new HashMap<>();
        FIELDS.forEach((column, field) -> typed.put(field, List.of(row.cell(column))));
        names.id(row.cell("crop"))
                .ifPresentOrElse(
                        crop -> typed.put("crop", List.of(crop)),
                        () -> troubles.add(
                                new RowTrouble(row.number(), "crop", SAY.cropUnknown(Given.shown(row.cell("crop"))))));
        typed.put("owner", List.of(owner == null ? "group" : "mine"));
        String treated = row.cell("treated");
        Optional<Boolean> said = treated.isEmpty() ? Optional.of(false) : YesOrNo.read(treated);
        if (said.isEmpty()) {
            troubles.add(new RowTrouble(row.number(), "treated", SAY.treatedUnknown(Given.shown(treated))));
        } else if (said.get()) {
            typed.put("treated", List.of("yes"));
        }
        return typed;
    }

    private static String column(String field) {
        return FIELDS.entrySet().stream()
                .filter(each -> each.getValue().equals(field))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(field);
    }

    private @Nullable UUID owner(TableRow row, List<RowTrouble> troubles) {
        String name = row.cell("owner");
        return switch (order.whose()) {
            case MINE -> order.by();
            case GROUP -> null;
            case COLUMN -> {
                UUID named = owners.get(Member.key(name));
                if (!name.isEmpty() && named == null) {
                    troubles.add(new RowTrouble(row.number(), "owner", SAY.ownerUnknown(Given.shown(name))));
                }
                yield named;
            }
        };
    }

    private List<GerminationTest> tests(TableRow row, List<RowTrouble> troubles) {
        List<GerminationTest> tests = new ArrayList<>();
        String rest = row.cell("tests");
        Matcher test = TEST.matcher(rest);
        int from = 0;
        while (test.find(from)
                && BETWEEN_TESTS.matcher(rest.substring(from, test.start())).matches()) {
            TestForm form = TestForm.of(
                    Map.of(
                            "testedOn", List.of(test.group(1)),
                            "germinated", List.of(test.group(2)),
                            "testSeeds", List.of(test.group(3))),
                    order.today());
            form.problems().values().forEach(sentence -> troubles.add(new RowTrouble(row.number(), "tests", sentence)));
            form.test().ifPresent(tests::add);
            from = test.end();
        }
        if (!BETWEEN_TESTS.matcher(rest.substring(from)).matches()) {
            troubles.add(new RowTrouble(row.number(), "tests", SAY.testsUnreadable(Given.shown(rest.substring(from)))));
        }
        return tests;
    }

    private static @Nullable UUID id(TableRow row, List<RowTrouble> troubles) {
        String text = row.cell("id");
        if (text.isEmpty()) {
            return null;
        }
        try {
            UUID id = UUID.fromString(text);
            if (id.toString().equalsIgnoreCase(text)) {
                return id;
            }
        } catch (IllegalArgumentException malformed) {
            // falls through to the sentence below, which covers both cases
        }
        troubles.add(new RowTrouble(row.number(), "id", SAY.idMalformed(Given.shown(text))));
        return null;
    }

    /** The same row gets the same id again; of several alike in one file, as of packets bought together, each its own. */
    private UUID made(NewLot lot, List<GerminationTest> tests) {
        String content = String.join(
                "\n",
                lot.cropId(),
                lot.variety(),
                String.valueOf(lot.seedYear()),
                String.valueOf(lot.seedsLeft()),
                String.valueOf(lot.ownerId()),
                String.valueOf(lot.treated()),
                lot.source().word(),
                lot.storage().kind().word(),
                String.valueOf(lot.storage().measured()),
                lot.note(),
                tests.toString());
        int number = alike.merge(content, 1, Integer::sum);
        return UUID.nameUUIDFromBytes((content + "\n" + number).getBytes(StandardCharsets.UTF_8));
    }
}
