package warmshelf.frost.minima;

import java.util.ArrayList;
import java.util.List;

/** Takes one line of a CSV file apart; quoted cells may hold commas. */
public final class CsvLine {
    private CsvLine() {}

    /** The cells, without the spaces around them. */
    public static List<String> of(String line) {
        return line.indexOf('"') < 0 ? plain(line) : quoted(line);
    }

    private static List<String> plain(String line) {
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int comma = line.indexOf(','); comma >= 0; comma = line.indexOf(',', from)) {
            cells.add(line.substring(from, comma).strip());
            from = comma + 1;
        }
        cells.add(line.substring(from).strip());
        return cells;
    }

    private static List<String> quoted(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
