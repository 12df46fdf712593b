package warmshelf.crop;

import java.util.OptionalDouble;

/**
 * When seed is expected to come up at one temperature.
 *
 * @param days median days from sowing to emergence
 * @param days5 days by which the first twentieth is expected
 * @param days95 days by which all but the last twentieth is expected
 * @param normalShare share 0..1 of good seed that makes a normal seedling at this temperature, where it was tested
 */
public record Emergence(double days, double days5, double days95, OptionalDouble normalShare) {}
