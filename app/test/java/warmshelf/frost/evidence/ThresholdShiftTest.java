package warmshelf.frost.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;

class ThresholdShiftTest {
    private static final double NINE_TENTHS = 1.2816;

    /**
     * Albany International Airport, New York, in NOAA/NCEI's 1991-2020 US Climate Normals (public domain). Last at 32 °F: half
     * of the springs after 27 April, nine in ten after 16 April; at 28 °F half after 16 April. First at 32 °F: half of the
     * autumns before 15 October, nine in ten before 1 November; at 28 °F half before 28 October.
     */
    @Test
    void it_finds_the_killing_frost_of_a_published_station_within_three_days() {
        double springSd = (117 - 106) / NINE_TENTHS;
        double autumnSd = (305 - 288) / NINE_TENTHS;

        assertThat(117 + ThresholdShift.days(Side.SPRING, Threshold.KILLING, springSd))
                .isCloseTo(106, within(3.0));
        assertThat(288 + ThresholdShift.days(Side.AUTUMN, Threshold.KILLING, autumnSd))
                .isCloseTo(301, within(3.0));
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void killing_frost_keeps_farther_from_summer_than_frost_and_light_frost_comes_nearer(Side side) {
        double killing = side.sign() * ThresholdShift.days(side, Threshold.KILLING, 12);
        double light = side.sign() * ThresholdShift.days(side, Threshold.LIGHT, 12);

        assertThat(killing).isNegative();
        assertThat(ThresholdShift.days(side, Threshold.FROST, 12)).isZero();
        assertThat(light).isPositive();
    }
}
