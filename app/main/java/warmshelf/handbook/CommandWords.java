package warmshelf.handbook;

import java.util.List;

/**
 * A command as its own help tells it.
 *
 * @param synopsis how it is written on the command line, without the program's name
 * @param about what it does
 * @param options what it takes, in the order of its help; without help and version
 * @param prints what it prints and what else there is to know, a paragraph each
 */
public record CommandWords(String name, String synopsis, String about, List<OptionWords> options, List<String> prints) {

    /**
     * An option or a word that a command takes.
     *
     * @param names how it is written, with what it takes, such as {@code --port=PORT}
     * @param about what it means and what holds when it is not given
     */
    public record OptionWords(String names, String about) {}
}
