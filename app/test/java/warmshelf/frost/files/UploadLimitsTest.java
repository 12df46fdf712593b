package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

class UploadLimitsTest {
    private TestGroup group;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void more_than_250_megabytes_are_refused_with_a_sentence() {
        Answer answer = new Upload()
                .field("kind", "tell")
                .file("large.csv", 300_000_000, () -> zeros(300_000_000))
                .post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.text()).contains("files of up to 250 MB are accepted");
        assertThat(SentFiles.leftFiles()).isZero();
    }

    @Test
    void a_sender_who_does_not_tell_the_length_is_stopped_at_the_limit() {
        Answer answer = new Upload()
                .field("kind", "tell")
                .file("large.csv", 300_000_000, () -> zeros(300_000_000))
                .postInPieces(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(413);
        assertThat(SentFiles.leftFiles()).isZero();
    }

    @Test
    void a_field_as_large_as_a_file_is_refused() {
        Answer answer = new Upload()
                .field("kind", "tell")
                .field("source", "x".repeat(2_000_000))
                .file("s.csv", SentFiles.STATIONS)
                .post(ilse, "/frost/imports");

        assertThat(answer.status()).isEqualTo(413);
    }

    @Test
    void other_addresses_still_take_one_megabyte() {
        Answer answer = new Upload().file("s.csv", "x".repeat(2_000_000)).post(ilse, "/frost/months");

        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.text()).contains("at most 1 MB");
    }

    private static InputStream zeros(long length) {
        return new InputStream() {
            private long left = length;

            @Override
            public int read() {
                return left-- > 0 ? '0' : -1;
            }

            @Override
            public int read(byte[] into, int from, int wanted) {
                if (left <= 0) {
                    return -1;
                }
                int some = (int) Math.min(wanted, left);
                java.util.Arrays.fill(into, from, from + some, (byte) '0');
                left -= some;
                return some;
            }
        };
    }
}
