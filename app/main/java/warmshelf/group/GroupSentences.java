package warmshelf.group;

import warmshelf.words.Sentences;

/** What is said when something about the people of the group is not done; the words stand in the room's file. */
interface GroupSentences {
    GroupSentences SAY = Sentences.of(GroupSentences.class);

    String firstSite();

    String firstRack();

    String firstPeople();

    String firstDuty();

    String firstSpace();

    String nameTooLong(String name, int longest);

    String tooManyNames(int names, int most);

    String noNames();

    String inviteMessage(String name, String group, String link);

    String onlyCoordinator(String member);

    String nameTaken(String name);

    String linkUsed();

    String linkClosed();

    String linkUnknown();

    String linkOfSomebodyGone();

    String openedAlready();

    String noSuchPassphrase();

    String countryMissing();

    String postcodeSigns(String label, String code);

    String notAmerican(String label, String code);

    String notAmericanButSimilar(String label, String code, String similar);

    String passphraseLength(String label, int length, int least, int most);

    String linksFromAddress();

    String signInFromAddress();

    String signInByNameFromAddress();

    String signInByName();

    String signInOnKnownDevice();

    String passkeysFromAddress();

    String passphraseChange();

    String passphraseRepeats(String label);

    String passphraseIsName(String label);

    String passphraseEasy(String label);

    String passphraseWrong();

    String zoneUnknown(String zone);

    String roleUnknown();

    String asTheGroup();

    String settingsChanged();

    String settingsSaved();

    String passphraseChanged();

    String groupSaved();

    String isNow(String label, String here, String there);

    String welcome(String name);

    String groupOpen(String group);

    String signedOut();

    String linkMade(String whom);

    String signInLinkMade(String whom);

    String linkNotOpen();

    String linkWithdrawn();

    String coordinatorNow(String member);

    String siteCoordinatorNow(String member, String sites);

    String siteUnknown();

    String plainMemberNow(String member);

    String belongsAgain(String member);

    String hasLeft(String member);

    String groupNameField();

    String groupPostcodeField();

    String seasonField();

    String temperaturesField();

    String lengthsField();

    String zoneField();

    String countryField();

    String centimetres();

    String inches();

    String degrees(String scale);

    String ownPostcodeField();

    String versionField();

    String ownNameField();

    String passphraseField();

    String passphraseNowField();

    String newPassphraseField();

    String joinsAsField();

    String forWhomField();

    String member();

    String coordinator();

    String pageField();
}
