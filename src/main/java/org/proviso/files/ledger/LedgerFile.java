package org.proviso.files.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.chain.ChainCheck;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.files.InputException;
import org.proviso.files.csv.Utf8Reader;

/** An exported ledger: one entry a line, in canonical JSON. */
public final class LedgerFile {

    private static final int FIELDS = 8;

    /** What following the chain found: how many entries fit, the head, and what is wrong with the first that does not. */
    public record ChainVerdict(long entries, String headHash, Optional<String> fault) {}

    private final String file;

    private LedgerFile(String file) {
        this.file = file;
    }

    /** Follows the chain in the file; needs no database. */
    public static ChainVerdict verify(Path path) {
        if (!Files.isRegularFile(path)) {
            throw new InputException(path.toString(), 0, "", "is not a file");
        }
        LedgerFile ledger = new LedgerFile(path.getFileName().toString());
        try (BufferedReader reader = new BufferedReader(new Utf8Reader(path))) {
            return ledger.follow(reader);
        } catch (IOException e) {
            throw new InputException(ledger.file, 0, "", "cannot be read: " + e.getMessage());
        }
    }

    private ChainVerdict follow(BufferedReader reader) throws IOException {
        ChainCheck check = new ChainCheck();
        int line = 0;
        for (String text = reader.readLine(); text != null; text = reader.readLine()) {
            line++;
            LedgerEntry entry = entry(text, line);
            Optional<String> fault = check.next(entry);
            if (fault.isEmpty() && !entry.line().equals(text)) {
                fault = Optional.of("entry " + entry.sequence() + " is not written in canonical JSON");
            }
            if (fault.isPresent()) {
                int at = line;
                return new ChainVerdict(
                        check.entries(), check.headHash(), fault.map(words -> file + " line " + at + ": " + words));
            }
        }
        if (line == 0) {
            throw new InputException(file, 0, "", "is empty; a ledger has at least one entry");
        }
        return new ChainVerdict(check.entries(), check.headHash(), Optional.empty());
    }

    private LedgerEntry entry(String text, int line) {
        try {
            Map<String, Object> fields = LedgerJsonReader.object(text);
            if (fields.size() == FIELDS) {
                return entry(fields, line);
            }
            throw notAnEntry(line, "");
        } catch (JsonProcessingException e) {
            throw notAnEntry(line, ": " + e.getOriginalMessage());
        } catch (IOException e) {
            throw notAnEntry(line, ": " + e.getMessage());
        }
    }

    @SuppressWarnings("unchecked") // value() puts only texts as keys
    private LedgerEntry entry(Map<?, ?> fields, int line) {
        if (!(fields.get("sequence") instanceof Long sequence)
                || !(fields.get("payload") instanceof Map<?, ?> payload)) {
            throw notAnEntry(line, "");
        }
        return new LedgerEntry(
                sequence,
                text(fields, "at", line),
                text(fields, "actor", line),
                text(fields, "act", line),
                text(fields, "subject", line),
                (Map<String, Object>) payload,
                text(fields, "previous_hash", line),
                text(fields, "hash", line));
    }

    private String text(Map<?, ?> fields, String name, int line) {
        if (fields.get(name) instanceof String text) {
            return text;
        }
        throw notAnEntry(line, ": " + name + " is missing");
    }

    private InputException notAnEntry(int line, String why) {
        return new InputException(file, line, "", "is not a ledger entry" + why);
    }
}
