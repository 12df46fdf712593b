package warmshelf.words;

/** How days, counts and what was typed are worded everywhere; the words stand in the room’s file. */
interface WordsSentences {
    WordsSentences SAY = Sentences.of(WordsSentences.class);

    String span(String first, String last);

    String leaves(String day);

    String momentAgo();

    String minutesAgo(long minutes);

    String hoursAgo(long hours);

    String daysAgo(long days);

    String weeks(int weeks);

    String weeksRange(int least, int most);

    String and(String others, String last);

    String tooLong(String field, int characters, int most);

    String controlCharacter(String field);

    String empty(String field);

    String numberEmpty(String field, String least, String most);

    String wholeNumberUnfit(String field, String given, String least, String most);

    String numberUnfit(String field, String given, String least, String most);

    String dateUnfit(String field, String given);

    String choiceUnfit(String field, String given, String accepted);
}
