package warmshelf.finding.season;

import java.util.Locale;

/**
 * What electricity costs.
 *
 * @param perKilowattHour in the currency, more than 0
 * @param currency as people write it, for example USD
 */
record EnergyPrice(double perKilowattHour, String currency) {
    /** What so much costs, for example '41.25 USD'. */
    String of(double kilowattHours) {
        return String.format(Locale.ROOT, "%.2f %s", perKilowattHour * kilowattHours, currency);
    }
}
