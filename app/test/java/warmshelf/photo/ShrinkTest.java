package warmshelf.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import warmshelf.words.Units;

class ShrinkTest {
    @Test
    void a_large_picture_becomes_1280_pixels_long_and_at_most_300_kilobytes() {
        Picture picture = shrunk(Pictures.jpeg(4000, 3000));

        assertThat(picture.width()).isEqualTo(1280);
        assertThat(picture.height()).isEqualTo(960);
        assertThat(picture.jpeg().length).isLessThanOrEqualTo(300 * 1024);
        assertThat(Pictures.read(picture.jpeg()).getWidth()).isEqualTo(1280);
    }

    @Test
    void a_picture_that_hardly_becomes_small_loses_sharpness_before_it_is_too_large() {
        byte[] noise = Pictures.noise(2600, 2000);

        Picture picture = shrunk(noise);

        assertThat(noise.length).isGreaterThan(2_000_000);
        assertThat(picture.jpeg().length).isLessThanOrEqualTo(300 * 1024);
    }

    @Test
    void a_small_picture_keeps_its_size() {
        Picture picture = shrunk(Pictures.jpeg(320, 200));

        assertThat(picture.width()).isEqualTo(320);
        assertThat(picture.height()).isEqualTo(200);
    }

    @Test
    void what_a_camera_writes_beside_the_picture_is_gone_and_the_picture_stands_upright() {
        byte[] fromCamera = Pictures.asFromCamera(Pictures.jpeg(800, 600), 6);
        assertThat(Pictures.tellsMore(fromCamera)).isTrue();

        Picture picture = shrunk(fromCamera);

        assertThat(Pictures.tellsMore(picture.jpeg())).isFalse();
        assertThat(new String(picture.jpeg(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "Cellar camera");
        // Orientation 6 of the Exif standard: what was the left edge is now on top.
        BufferedImage upright = Pictures.read(picture.jpeg());
        assertThat(upright.getWidth()).isEqualTo(600);
        assertThat(upright.getHeight()).isEqualTo(800);
        assertThat(new Color(upright.getRGB(300, 100)).getRed()).isGreaterThan(200);
        assertThat(new Color(upright.getRGB(300, 700)).getBlue()).isGreaterThan(200);
    }

    @Test
    void what_is_seen_through_becomes_white() {
        Picture picture = shrunk(Pictures.seeThroughPng(60, 40));

        assertThat(new Color(Pictures.read(picture.jpeg()).getRGB(30, 20)).getGreen())
                .isGreaterThan(250);
    }

    @Test
    void a_text_and_half_a_picture_are_no_pictures() {
        byte[] whole = Pictures.jpeg(300, 300);

        for (byte[] file :
                List.of("a list of seeds".getBytes(StandardCharsets.UTF_8), Arrays.copyOf(whole, 100), new byte[0])) {
            assertThat(Shrink.picture(file).refusal()).contains(new PhotoRefusal.Unreadable());
        }
        assertThat(new PhotoRefusal.Unreadable().words(Units.METRIC))
                .startsWith("The photo could not be read; a whole JPEG or PNG picture is accepted");
    }

    @Test
    void a_few_bytes_that_say_they_are_a_huge_picture_are_refused_before_any_room_is_made_for_it() {
        assertThat(Shrink.picture(pngHeader(60_000, 60_000)).refusal())
                .hasValueSatisfying(no -> assertThat(no.words(Units.METRIC))
                        .isEqualTo("The photo is 60,000 by 60,000 pixels; at most 220 million pixels are accepted."));
    }

    private static Picture shrunk(byte[] file) {
        return Shrink.picture(file).orDecline();
    }

    /** The signature and header chunk of a PNG file, as in the PNG specification (ISO/IEC 15948), section 11.2.2. */
    private static byte[] pngHeader(int width, int height) {
        ByteBuffer chunk = ByteBuffer.allocate(17);
        chunk.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
        chunk.put(new byte[] {8, 2, 0, 0, 0});
        CRC32 check = new CRC32();
        check.update(chunk.array());
        ByteBuffer file = ByteBuffer.allocate(8 + 4 + 17 + 4);
        file.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        file.putInt(13).put(chunk.array()).putInt((int) check.getValue());
        return file.array();
    }
}
