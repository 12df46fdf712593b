package warmshelf.label.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QrSquareTest {
    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-(\\d+)z");
    private static final int PIXELS = 4;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://192.168.1.20:7070/c/K7P4MX",
                "https://seeds.example.org/c/K7P4MX",
                "https://a-very-long-name-of-a-machine.somewhere-in-the-north.example.org:8443/c/K7P4MX"
            })
    void a_reader_finds_in_the_drawing_what_was_written(String address) throws Exception {
        QrSquare picture = QrSquare.alone(address);

        assertThat(new QRCodeReader()
                        .decode(new BinaryBitmap(new HybridBinarizer(new Painted(picture))))
                        .getText())
                .isEqualTo(address);
    }

    @ParameterizedTest
    @ValueSource(strings = "https://seeds.example.org/c/K7P4MX")
    void a_quiet_zone_of_four_modules_surrounds_it(String address) {
        QrSquare picture = QrSquare.alone(address);

        // ISO/IEC 18004: four modules on each side
        assertThat(picture.quiet()).isEqualTo(4);
        assertThat(picture.side()).isEqualTo(picture.modules() + 8);
        Matcher run = RUN.matcher(picture.path());
        while (run.find()) {
            assertThat(Integer.parseInt(run.group(2))).isBetween(0, picture.modules() - 1);
            assertThat(Integer.parseInt(run.group(1)) + Integer.parseInt(run.group(3)))
                    .isLessThanOrEqualTo(picture.modules());
        }
    }

    /** The path painted on white, as a camera would see it. */
    private static final class Painted extends LuminanceSource {
        private final byte[] light;

        Painted(QrSquare picture) {
            super(((int) picture.side()) * PIXELS, ((int) picture.side()) * PIXELS);
            light = new byte[getWidth() * getHeight()];
            Arrays.fill(light, (byte) 255);
            Matcher run = RUN.matcher(picture.path());
            while (run.find()) {
                paint(
                        (picture.quiet() + Integer.parseInt(run.group(1))) * PIXELS,
                        (picture.quiet() + Integer.parseInt(run.group(2))) * PIXELS,
                        Integer.parseInt(run.group(3)) * PIXELS);
            }
        }

        private void paint(int left, int top, int width) {
            for (int y = top; y < top + PIXELS; y++) {
                Arrays.fill(light, y * getWidth() + left, y * getWidth() + left + width, (byte) 0);
            }
        }

        @Override
        public byte[] getRow(int y, byte[] row) {
            return Arrays.copyOfRange(light, y * getWidth(), (y + 1) * getWidth());
        }

        @Override
        public byte[] getMatrix() {
            return light;
        }
    }
}
