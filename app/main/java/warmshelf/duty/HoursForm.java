package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.words.FormReader;

/** Each site's hour, and whether it is looked at together with others. */
public final class HoursForm {
    private static final DateTimeFormatter HOUR =
            DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH).withResolverStyle(ResolverStyle.STRICT);
    private static final String HOUR_FIELD = "hour-";
    private static final String TOGETHER_FIELD = "together-";

    private HoursForm() {}

    /** A site's line on the page, as it stands or as typed. */
    public record Line(Named site, String hour, boolean together) {
        public String getHourField() {
            return HOUR_FIELD + site.id();
        }

        public String getTogetherField() {
            return TOGETHER_FIELD + site.id();
        }
    }

    static List<Line> lines(List<SiteRule> rules, FormReader form) {
        return rules.stream().map(rule -> line(rule, form)).toList();
    }

    private static Line line(SiteRule rule, FormReader form) {
        String field = HOUR_FIELD + rule.site().id();
        if (form.typed().containsKey(field)) {
            return new Line(
                    rule.site(),
                    form.text(field),
                    form.ticked(TOGETHER_FIELD + rule.site().id()));
        }
        LocalTime doneBy = rule.doneBy();
        return new Line(rule.site(), doneBy == null ? "" : doneBy.toString(), rule.together());
    }

    /** The rules as sent, of the sites that were on the form. */
    static List<SiteRule> read(FormReader form, List<SiteRule> rules) {
        List<SiteRule> read = new ArrayList<>();
        for (SiteRule rule : rules) {
            String field = HOUR_FIELD + rule.site().id();
            if (form.typed().containsKey(field)) {
                read.add(new SiteRule(
                        rule.site(),
                        hour(form, field, rule.site().name()).orElse(null),
                        form.ticked(TOGETHER_FIELD + rule.site().id())));
            }
        }
        return read;
    }

    private static Optional<LocalTime> hour(FormReader form, String field, String site) {
        String text = form.text(field);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalTime.parse(text, HOUR));
        } catch (DateTimeParseException notAnHour) {
            form.refuse(field, SAY.noSuchHour(site, text.length() > 40 ? "…" : text));
            return Optional.empty();
        }
    }
}
