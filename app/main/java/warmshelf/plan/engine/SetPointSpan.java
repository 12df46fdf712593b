package warmshelf.plan.engine;

/**
 * Days on which a mat's thermostat is set to one temperature.
 *
 * @param celsius a whole degree where the planner chose it; to a tenth where a person did
 */
public record SetPointSpan(String mat, DayRange days, double celsius) {}
