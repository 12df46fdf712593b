package warmshelf.plan.engine;

/** Days on which a mat's thermostat is set to one temperature. */
public record SetPointSpan(String mat, DayRange days, int celsius) {}
