package warmshelf.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import warmshelf.label.paper.LabelDrawing;
import warmshelf.label.paper.LabelLayout;
import warmshelf.label.paper.LabelPdf;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.Lettering;
import warmshelf.label.paper.PrinterScale;
import warmshelf.label.paper.SampleLabels;
import warmshelf.label.paper.StockTable;

/**
 * How long 500 labels take, from their words to the PDF, each with a code, a variety and a grower of its own: at once after the
 * start, the fonts being read then, and warm.
 */
public final class LabelBench {
    private static final int LABELS = 500;
    private static final int ROUNDS = 6;

    private LabelBench() {}

    public static void main(String[] args) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        Map<String, List<Double>> clock = new TreeMap<>();
        for (int round = 1; round <= ROUNDS; round++) {
            for (String key : List.of("letter-30", "stick-5in")) {
                LabelStock stock = StockTable.find(key).orElseThrow();
                long begin = System.nanoTime();
                long busy = threads.getCurrentThreadCpuTime();
                byte[] pdf = made(stock, round);
                double seconds = (System.nanoTime() - begin) / 1e9;
                clock.computeIfAbsent(key, sheet -> new ArrayList<>()).add(seconds);
                double processor = (threads.getCurrentThreadCpuTime() - busy) / 1e9;
                System.out.printf(
                        Locale.ROOT,
                        "round %d, %s: %d labels in %.2f s by the clock, %.2f s of the processor, %,d bytes%n",
                        round,
                        key,
                        LABELS,
                        seconds,
                        processor,
                        pdf.length);
            }
        }
        clock.forEach((key, seconds) -> System.out.printf(
                Locale.ROOT,
                "%s by the clock: %.2f s the first time, then %.2f s in the median and %.2f s at most; aim under 2 s%n",
                key,
                seconds.get(0),
                median(seconds.subList(1, seconds.size())),
                seconds.stream().skip(1).mapToDouble(Double::doubleValue).max().orElseThrow()));
    }

    private static double median(List<Double> seconds) {
        return seconds.stream().sorted().skip(seconds.size() / 2).findFirst().orElseThrow();
    }

    private static byte[] made(LabelStock stock, int round) {
        LabelLayout layout = new LabelLayout(stock, Lettering.bundled());
        List<LabelDrawing> labels = new ArrayList<>();
        for (int i = 0; i < LABELS; i++) {
            String code =
                    "%c%c%c %c%c%c".formatted(sign(i), sign(i * 7), sign(i / 31), sign(i * 3), sign(round), sign(i));
            labels.add(layout.of(SampleLabels.of(
                            code,
                            "HTTPS://SEEDS.EXAMPLE.ORG/C/" + code.replace(" ", ""),
                            "Variety %d of %d".formatted(i, round),
                            "Member%d".formatted(i)))
                    .orElseThrow());
        }
        return LabelPdf.of(new LabelPdf.Setting(stock, PrinterScale.NONE, 1, false), labels, "Labels");
    }

    private static char sign(int number) {
        return "23456789ABCDEFGHJKMNPQRSTUVWXYZ".charAt(number % 31);
    }
}
