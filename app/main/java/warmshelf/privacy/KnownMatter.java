package warmshelf.privacy;

import static warmshelf.privacy.PrivacySentences.SAY;

/** What things known of a person are about, in the order in which they are told. */
enum KnownMatter {
    YOU(SAY.aboutYou()),
    GARDEN(SAY.aboutGarden()),
    SOWINGS(SAY.aboutSowings()),
    SEEN(SAY.aboutSeen()),
    SEED(SAY.aboutSeed()),
    DUTY(SAY.aboutDuty()),
    TOLD(SAY.aboutTold()),
    IN(SAY.aboutSigningIn()),
    DONE(SAY.aboutDone()),
    CHANGES(SAY.aboutChanges());

    private final String title;

    KnownMatter(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }
}
