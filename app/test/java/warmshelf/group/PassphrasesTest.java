package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PassphrasesTest {
    /** The least that the OWASP Password Storage Cheat Sheet names for Argon2id: m=19456 (19 MiB), t=2, p=1. */
    private static final String LEAST = "$argon2id$v=19$m=19456,t=2,p=1$";

    @Test
    void what_guards_members_costs_as_much_as_the_cheat_sheet_asks_for() {
        Passphrases passphrases = new Passphrases();

        String hash = passphrases.hash("a row of lanterns");

        assertThat(hash).startsWith(LEAST);
        assertThat(passphrases.fits("a row of lanterns", hash)).isTrue();
        assertThat(passphrases.fits("a row of lantern", hash)).isFalse();
    }

    @Test
    void without_a_member_the_same_work_is_done_and_nothing_fits() {
        Passphrases passphrases = new Passphrases();

        assertThat(passphrases.hashOfNobody())
                .startsWith(LEAST)
                .hasSameSizeAs(passphrases.hash("a row of lanterns"))
                .isNotEqualTo(new Passphrases().hashOfNobody());
        assertThat(passphrases.fits("a row of lanterns", null)).isFalse();
        assertThat(passphrases.fits("a row of lanterns", passphrases.hashOfNobody()))
                .isFalse();
    }
}
