package warmshelf.web;

import io.pebbletemplates.pebble.extension.AbstractExtension;
import io.pebbletemplates.pebble.extension.Filter;
import io.pebbletemplates.pebble.extension.Function;
import io.pebbletemplates.pebble.template.EvaluationContext;
import io.pebbletemplates.pebble.template.PebbleTemplate;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** The filters and functions that templates write figures and dates with. An absent value is written as nothing. */
final class TemplateWords extends AbstractExtension {
    private final Assets assets;

    TemplateWords(Assets assets) {
        this.assets = assets;
    }

    @Override
    public Map<String, Filter> getFilters() {
        return Map.ofEntries(
                Map.entry("temperature", new Written((value, units) -> units.temperature(number(value)))),
                Map.entry("degrees", new Written((value, units) -> String.valueOf(units.degrees(number(value))))),
                Map.entry("length", new Written((value, units) -> units.length(number(value)))),
                Map.entry("finetemperature", new Written((value, units) -> units.fineTemperature(number(value)))),
                Map.entry("height", new Written((value, units) -> units.height(number(value)))),
                Map.entry("distance", new Written((value, units) -> units.distance(number(value)))),
                Map.entry("date", new Written((value, units) -> DayWords.date((LocalDate) value))),
                Map.entry("day", new Written((value, units) -> DayWords.day((LocalDate) value))),
                Map.entry("weekday", new Written((value, units) -> DayWords.weekday((LocalDate) value))),
                Map.entry("lastday", new Written((value, units) -> DayWords.lastDay((LocalDate) value))),
                Map.entry("leaves", new Written((value, units) -> DayWords.leaves((LocalDate) value))),
                Map.entry("longday", new Written((value, units) -> DayWords.dateAndYear((LocalDate) value))),
                Map.entry("percent", new Written((value, units) -> Math.round(100 * number(value)) + " %")));
    }

    @Override
    public Map<String, Function> getFunctions() {
        return Map.of(
                "asset", new AssetAddress(assets),
                "freshname", new FreshName(),
                "span", new Span(),
                "counted", new Count());
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private record Written(BiFunction<Object, Units, String> words) implements Filter {
        @Override
        public Object apply(
                @Nullable Object input,
                Map<String, Object> arguments,
                PebbleTemplate self,
                EvaluationContext context,
                int line) {
            if (input == null) {
                return "";
            }
            Units units = context.getVariable("visitor") instanceof Visitor visitor ? visitor.units() : Units.METRIC;
            return words.apply(input, units);
        }

        @Override
        public List<String> getArgumentNames() {
            return List.of();
        }
    }

    private record FreshName() implements Function {
        @Override
        public Object execute(Map<String, Object> arguments, PebbleTemplate self, EvaluationContext context, int line) {
            return SubmissionGuard.freshName();
        }

        @Override
        public List<String> getArgumentNames() {
            return List.of();
        }
    }

    private record Span() implements Function {
        @Override
        public Object execute(Map<String, Object> arguments, PebbleTemplate self, EvaluationContext context, int line) {
            return DayWords.span(day(arguments, "from"), day(arguments, "afterLast"));
        }

        @Override
        public List<String> getArgumentNames() {
            return List.of("from", "afterLast");
        }
    }

    private record Count() implements Function {
        @Override
        public Object execute(Map<String, Object> arguments, PebbleTemplate self, EvaluationContext context, int line) {
            Number count = (Number) Objects.requireNonNull(arguments.get("count"), "count");
            return Counted.of(
                    count.longValue(), String.valueOf(arguments.get("one")), String.valueOf(arguments.get("several")));
        }

        @Override
        public List<String> getArgumentNames() {
            return List.of("count", "one", "several");
        }
    }

    private static LocalDate day(Map<String, Object> arguments, String name) {
        return (LocalDate) Objects.requireNonNull(arguments.get(name), name);
    }

    private record AssetAddress(Assets assets) implements Function {
        @Override
        public Object execute(Map<String, Object> arguments, PebbleTemplate self, EvaluationContext context, int line) {
            return assets.address(String.valueOf(arguments.get("name")));
        }

        @Override
        public List<String> getArgumentNames() {
            return List.of("name");
        }
    }
}
