package warmshelf.timeline;

import java.time.LocalDate;

/** The earliest, the ideal and the latest day for something; all three are included. */
record DateWindow(LocalDate earliest, LocalDate ideal, LocalDate latest) {
    DateWindow {
        if (earliest.isAfter(ideal) || ideal.isAfter(latest)) {
            throw new IllegalArgumentException(
                    "a window runs from early to late, was %s, %s, %s".formatted(earliest, ideal, latest));
        }
    }

    static DateWindow on(LocalDate day) {
        return new DateWindow(day, day, day);
    }

    DateWindow plusDays(int toEarliest, int toIdeal, int toLatest) {
        return new DateWindow(earliest.plusDays(toEarliest), ideal.plusDays(toIdeal), latest.plusDays(toLatest));
    }

    DateWindow plusDays(int days) {
        return plusDays(days, days, days);
    }

    DateWindow plus(LikelyDays days) {
        return plusDays(days.first(), days.usual(), days.last());
    }

    DateWindow notBefore(DateWindow other) {
        return new DateWindow(later(earliest, other.earliest), later(ideal, other.ideal), later(latest, other.latest));
    }

    DateWindow notBefore(LocalDate day) {
        return notBefore(on(day));
    }

    DateWindow notAfter(DateWindow other) {
        return new DateWindow(
                earlier(earliest, other.earliest), earlier(ideal, other.ideal), earlier(latest, other.latest));
    }

    static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
