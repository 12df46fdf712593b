package warmshelf.photo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Files that cost a decoder much. A decoder for progressive files holds every coefficient: 16 bits each (T.81, G.1), one for each
 * sample; of a picture with chroma at half the width and height 1.5 samples a pixel, so three bytes.
 */
class JpegFileTest {
    @Test
    void an_ordinary_file_has_one_scan_and_nothing_is_held_of_it() {
        JpegFile file = JpegFile.of(Pictures.jpeg(400, 300)).orElseThrow();

        assertThat(file.progressive()).isFalse();
        assertThat(file.scans()).isEqualTo(1);
        assertThat(file.heldBytes()).isZero();
    }

    @Test
    void of_a_progressive_file_three_bytes_are_held_for_each_pixel() {
        JpegFile file = JpegFile.of(Pictures.progressive(400, 300)).orElseThrow();

        assertThat(file.progressive()).isTrue();
        assertThat(file.scans()).isGreaterThan(2);
        assertThat(file.heldBytes()).isEqualTo(400 * 300 * 3L);
    }

    @Test
    void a_progressive_picture_from_a_phone_is_taken() {
        assertThat(Shrink.picture(Pictures.progressive(3000, 2000)).refusal()).isEmpty();
    }

    @Test
    void a_small_progressive_file_of_a_huge_picture_is_refused_before_it_is_decoded() {
        byte[] huge = Pictures.sayingItIs(Pictures.progressive(64, 64), 14_000, 14_000);

        assertThat(Shrink.picture(huge).refusal()).contains(new PhotoRefusal.TooManyScans());
    }

    @Test
    void a_file_with_hundreds_of_scans_is_refused_before_it_is_decoded() {
        byte[] slow = Pictures.withMoreScans(Pictures.progressive(64, 64), 100);

        assertThat(JpegFile.of(slow).orElseThrow().scans()).isGreaterThan(100);
        assertThat(Shrink.picture(slow).refusal()).contains(new PhotoRefusal.TooManyScans());
    }

    @Test
    void what_is_no_jpeg_has_no_cost_of_one() {
        assertThat(JpegFile.of(new byte[0])).isEmpty();
        assertThat(JpegFile.of(Pictures.seeThroughPng(10, 10))).isEmpty();
        assertThat(JpegFile.of(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xc2, 0, 9, 8, 1}))
                .isEmpty();
    }
}
