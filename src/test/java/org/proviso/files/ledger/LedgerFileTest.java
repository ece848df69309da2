package org.proviso.files.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.chain.SmallChain;

class LedgerFileTest {

    @TempDir
    Path folder;

    private final List<String> lines = new ArrayList<>(
            SmallChain.of(3).entries().stream().map(LedgerEntry::line).toList());

    @Test
    void holds_when_every_entry_fits() throws IOException {
        LedgerFile.ChainVerdict verdict = verdict();
        assertThat(verdict.fault()).isEmpty();
        assertThat(verdict.entries()).isEqualTo(3);
        assertThat(verdict.headHash()).isEqualTo(SmallChain.of(3).headHash());
    }

    @Test
    void names_the_first_entry_that_does_not_fit() throws IOException {
        lines.set(1, lines.get(1).replace("reject", "count"));
        assertThat(verdict().fault())
                .hasValue("ledger.jsonl line 2: entry 2 was changed: its hash does not match its content");
        assertThat(verdict().entries()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{ \"act\"", "{\"act\":\"\\u0061ssessed\",\"x\""})
    void takes_no_other_spelling_of_the_same_entry(String start) throws IOException {
        String spaced = lines.get(1).replaceFirst(":\"assessed\"", ": \"assessed\"");
        lines.set(1, start.startsWith("{ ") ? spaced : lines.get(1).replace("\"assessed\"", "\"\\u0061ssessed\""));
        assertThat(verdict().fault()).hasValue("ledger.jsonl line 2: entry 2 is not written in canonical JSON");
    }

    @Test
    void refuses_a_file_that_is_missing_or_empty() throws IOException {
        Path none = folder.resolve("none.jsonl");
        refused(() -> LedgerFile.verify(none), none.toString(), 0, "", "is not a file");
        lines.clear();
        refused(this::verdict, "ledger.jsonl", 0, "", "is empty");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "not json",
                "[]",
                "{}",
                "{\"act\":1,\"actor\":\"a\",\"at\":\"\",\"hash\":\"\",\"payload\":{},\"previous_hash\":\"\",\"sequence\":2,\"subject\":\"\"}",
                "{\"act\":\"\",\"actor\":\"a\",\"at\":\"\",\"hash\":\"\",\"payload\":[],\"previous_hash\":\"\",\"sequence\":2,\"subject\":\"\"}",
                "{\"act\":\"\",\"actor\":\"a\",\"at\":\"\",\"hash\":\"\",\"payload\":{},\"previous_hash\":\"\",\"sequence\":\"2\",\"subject\":\"\"}",
                "{\"act\":\"\",\"actor\":\"a\",\"at\":\"\",\"hash\":\"\",\"payload\":{\"x\":1.5},\"previous_hash\":\"\",\"sequence\":2,\"subject\":\"\"}",
                "{\"act\":\"\",\"actor\":\"a\",\"at\":\"\",\"hash\":\"\",\"payload\":{\"x\":null},\"previous_hash\":\"\",\"sequence\":2,\"subject\":\"\"}",
                "{\"act\":\"\",\"act\":\"\",\"at\":\"\",\"hash\":\"\",\"payload\":{},\"previous_hash\":\"\",\"sequence\":2,\"subject\":\"\"}",
                "{\"act\":\"\",\"actor\":\"a\",\"at\":\"\",\"hash\":\"\",\"payload\":{},\"previous_hash\":\"\",\"sequence\":99999999999999999999,\"subject\":\"\"}"
            })
    void refuses_a_line_that_is_no_entry(String line) {
        lines.set(1, line);
        refused(this::verdict, "ledger.jsonl", 2, "", "is not a ledger entry");
    }

    @Test
    void refuses_anything_after_the_entry_on_its_line() {
        lines.set(1, lines.get(1) + lines.get(2));
        refused(this::verdict, "ledger.jsonl", 2, "", "is not a ledger entry");
    }

    @Test
    void refuses_a_file_in_another_encoding() throws IOException {
        Path file = folder.resolve("latin.jsonl");
        Files.write(file, "{\"act\":\"\u00e9\"}\n".getBytes(StandardCharsets.ISO_8859_1));
        refused(() -> LedgerFile.verify(file), "latin.jsonl", 1, "", "UTF-8");
    }

    private LedgerFile.ChainVerdict verdict() throws IOException {
        Path file = folder.resolve("ledger.jsonl");
        Files.writeString(file, lines.isEmpty() ? "" : String.join("\n", lines) + "\n");
        return LedgerFile.verify(file);
    }
}
