package org.proviso.files.packs;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.CountyRuling;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.files.InputException;
import org.proviso.files.yaml.YamlDocument;
import org.proviso.files.yaml.YamlNode;

/** The rule packs that come with the program, and packs read from a file; each is laid over the pack it names. */
public final class RulePacks {

    private static final String FOLDER = "/rule-packs/";

    private RulePacks() {}

    /** The names of the packs that come with the program. */
    public static List<String> bundled() {
        return resource("packs.txt").lines().filter(line -> !line.isBlank()).toList();
    }

    /** A bundled pack by its name, or a pack file by its path. */
    public static RulePack load(String nameOrPath) {
        if (bundled().contains(nameOrPath)) {
            return over(bundledRoot(nameOrPath), List.of(nameOrPath));
        }
        Path file = Path.of(nameOrPath);
        if (!Files.exists(file)) {
            throw new InputException(
                    nameOrPath, 0, "", "is not a bundled rule pack (" + String.join(", ", bundled()) + ") or a file");
        }
        return over(YamlDocument.read(file), List.of(nameOrPath));
    }

    /** A pack from its text; {@code name} stands for the file where something is wrong with it. */
    public static RulePack read(String name, String text) {
        return over(YamlDocument.read(name, new StringReader(text)), List.of(name));
    }

    /** The county's rulings with their rules and values read; a ruling on an unknown rule is refused. */
    public static List<PackResolver.ParsedRuling> rulings(List<CountyRuling> rulings) {
        List<PackResolver.ParsedRuling> ruled = new ArrayList<>();
        for (CountyRuling ruling : rulings) {
            Rule rule = Rule.find(ruling.rule())
                    .orElseThrow(() -> InputException.atKey(
                            "election.yaml",
                            0,
                            "rulings",
                            InputException.quoted(ruling.rule()) + " is not a known rule"));
            ruled.add(new PackResolver.ParsedRuling(
                    rule,
                    ruling.value().isEmpty()
                            ? null
                            : RuleValueReader.readLine(rule, "ruling on " + rule.key(), ruling.value()),
                    ruling));
        }
        return ruled;
    }

    private static RulePack over(YamlNode root, List<String> seen) {
        RulePackReader.LayeredPack read = RulePackReader.read(root);
        if (read.over().isEmpty()) {
            return read.pack();
        }
        if (seen.contains(read.over()) || !bundled().contains(read.over())) {
            throw root.required("over")
                    .wrong(InputException.quoted(read.over()) + " is not a rule pack that can be a base for another");
        }
        List<String> deeper = new ArrayList<>(seen);
        deeper.add(read.over());
        return read.pack().over(over(bundledRoot(read.over()), deeper));
    }

    private static YamlNode bundledRoot(String name) {
        InputStream stream = RulePacks.class.getResourceAsStream(FOLDER + name + ".yaml");
        if (stream == null) {
            throw new InputException(name + ".yaml", 0, "", "is missing from the program");
        }
        return YamlDocument.read(name + ".yaml", new InputStreamReader(stream, StandardCharsets.UTF_8));
    }

    private static String resource(String name) {
        try (InputStream stream = RulePacks.class.getResourceAsStream(FOLDER + name)) {
            return stream == null ? "" : new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
