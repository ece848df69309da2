package org.proviso.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.proviso.files.packs.RulePacks;

/** The text of a bundled pack with a few of its lines changed, as a pack file. */
public final class PackText {

    private String text;

    private PackText(String text) {
        this.text = text;
    }

    public static PackText of(String bundled) {
        try (InputStream pack = RulePacks.class.getResourceAsStream("/rule-packs/" + bundled + ".yaml")) {
            return new PackText(new String(pack.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Another value for a rule, written as the file writes it. */
    public PackText value(String rule, String value) {
        return inRule(rule, "value: .*(\n        .*)?", "value: " + value);
    }

    public PackText basis(String rule, String basis) {
        return inRule(rule, "basis: .*", "basis: " + basis);
    }

    /** The first match of a pattern within the lines of a rule. */
    public PackText inRule(String rule, String pattern, String replacement) {
        int start = text.indexOf("\n  " + rule + ":\n") + 1;
        int end = text.indexOf("checked:", start);
        if (start == 0) {
            throw new IllegalArgumentException("no rule " + rule);
        }
        String changed = text.substring(start, end).replaceFirst(pattern, replacement);
        text = text.substring(0, start) + changed + text.substring(end);
        return this;
    }

    /** The rule taken out. */
    public PackText without(String rule) {
        text = text.replaceFirst("(?m)^  " + rule.replace(".", "\\.") + ":\n(?:    .*\n|      .*\n)+", "");
        return this;
    }

    public PackText replace(String old, String changed) {
        if (!text.contains(old)) {
            throw new IllegalArgumentException("the pack has no " + old);
        }
        text = text.replace(old, changed);
        return this;
    }

    /** The line, counted from 1, in which a text stands first after a rule's key. */
    public int line(String rule, String wanted) {
        int at = text.indexOf(wanted, text.indexOf("\n  " + rule + ":\n"));
        return (int) text.substring(0, at).lines().count();
    }

    public Path in(Path folder) {
        try {
            return Files.writeString(folder.resolve("pack.yaml"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
