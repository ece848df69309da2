package org.proviso.journey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.EnvelopeNumber;

/** What the generator of a sample says of each envelope: what the people of a scripted canvass find out. */
public record Truth(EnvelopeNumber envelopeNo, String voterId, String outcome, String signature, String scenario) {

    public static Map<String, Truth> of(String sample) {
        try {
            List<String> lines = Files.readAllLines(Path.of("sample-cases", "truth", sample + ".csv"));
            Map<String, Truth> truths = new LinkedHashMap<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", -1);
                truths.put(cells[0], new Truth(new EnvelopeNumber(cells[0]), cells[1], cells[2], cells[4], cells[5]));
            }
            return truths;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public boolean counts() {
        return outcome.startsWith("count");
    }
}
