package org.proviso.files.election;

import java.nio.file.Path;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.proviso.core.CountyRuling;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.files.InputException;
import org.proviso.files.UploadFolder;
import org.proviso.files.yaml.YamlDocument;
import org.proviso.files.yaml.YamlNode;

/** Reads {@code election.yaml}: the election, its office, court orders, days closed and county rulings. */
public final class ElectionYamlReader {

    private ElectionYamlReader() {}

    private static final int LONGEST_NAME = 49;

    /**
     * The election in the file. Its id is the name of the folder the file lies in; of files that were sent without a folder,
     * the election's own name with its date, as {@code alder-county-primary-2026-08-04}.
     */
    public static Election read(Path file) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        Path id = folder == null ? null : folder.getFileName();
        if (folder == null || id == null) {
            throw new InputException(file.toString(), 0, "", "must lie in a folder, whose name is the election's id");
        }
        YamlNode root = YamlDocument.read(file);
        return election(UploadFolder.isOne(folder) ? named(root) : id.toString(), root);
    }

    private static String named(YamlNode root) {
        String plain = Normalizer.normalize(root.required("name").text(), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String name = plain.substring(0, Math.min(LONGEST_NAME, plain.length())).replaceAll("^-|-$", "");
        return (name.isEmpty() ? "election" : name) + "-"
                + root.required("date").date();
    }

    private static Election election(String id, YamlNode root) {
        root.rejectUnknownKeys(
                "name",
                "date",
                "kind",
                "jurisdiction",
                "zone",
                "rule_pack",
                "decider",
                "office",
                "polls_close",
                "languages",
                "orders",
                "days_closed",
                "rulings",
                "receipts");
        return new Election(
                new ElectionId(id),
                root.required("name").text(),
                root.required("date").date(),
                root.required("kind").code(Election.Kind.class),
                root.required("jurisdiction").text(),
                zone(root.required("zone")),
                root.required("rule_pack").text(),
                decider(root.required("decider")),
                office(root.required("office")),
                root.required("polls_close").time(),
                texts(root.required("languages")),
                list(root, "orders").stream().map(ElectionYamlReader::order).toList(),
                daysClosed(root),
                list(root, "rulings").stream().map(ElectionYamlReader::ruling).toList(),
                root.optional("receipts")
                        .map(node -> node.code(Election.Receipts.class))
                        .orElse(Election.Receipts.OWN));
    }

    private static ZoneId zone(YamlNode zone) {
        try {
            return ZoneId.of(zone.text());
        } catch (DateTimeException e) {
            throw zone.wrong(InputException.quoted(zone.text()) + " is not a time zone (write it as America/Denver)");
        }
    }

    private static Election.DecidingBody decider(YamlNode node) {
        node.rejectUnknownKeys("members", "quorum");
        int members = node.required("members").whole();
        int quorum = node.required("quorum").whole();
        if (members < 1) {
            throw node.required("members").wrong("must be at least 1");
        }
        if (quorum < 1 || quorum > members) {
            throw node.required("quorum").wrong("must be from 1 to the number of members (" + members + ")");
        }
        return new Election.DecidingBody(members, quorum);
    }

    private static Election.Office office(YamlNode node) {
        node.rejectUnknownKeys("name", "address", "phone", "email", "hours");
        return new Election.Office(
                node.required("name").text(),
                node.required("address").text(),
                node.required("phone").text(),
                node.required("email").text(),
                node.optional("hours").map(ElectionYamlReader::hours).orElse(Map.of()));
    }

    /** By the code of a language, such as {@code en}. */
    private static Map<String, String> hours(YamlNode node) {
        Map<String, String> hours = new TreeMap<>();
        for (String language : node.keys()) {
            YamlNode words = node.required(language);
            if (!language.matches("[a-z]{2,3}")) {
                throw words.wrong(InputException.quoted(language) + " is not a language code (write it as en)");
            }
            if (words.text().isBlank() || words.text().contains("\n")) {
                throw words.wrong("must be one line of text");
            }
            hours.put(language, words.text());
        }
        return Collections.unmodifiableMap(hours);
    }

    private static CourtOrder order(YamlNode node) {
        node.rejectUnknownKeys("kind", "court", "date", "scope", "standing", "until", "envelopes");
        return new CourtOrder(
                node.required("kind").code(CourtOrder.Kind.class),
                node.required("court").text(),
                node.optional("date").map(YamlNode::date).orElse(null),
                text(node, "scope"),
                node.required("standing").code(CourtOrder.Status.class),
                node.optional("until").map(YamlNode::dateTime).orElse(null),
                node.optional("envelopes").map(ElectionYamlReader::texts).orElse(List.of()).stream()
                        .map(EnvelopeNumber::new)
                        .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    public static CountyRuling ruling(YamlNode node) {
        node.rejectUnknownKeys("rule", "value", "signed_by", "on", "ground");
        return new CountyRuling(
                node.required("rule").text(),
                text(node, "value"),
                node.required("signed_by").text(),
                node.required("on").date(),
                node.required("ground").text());
    }

    private static Set<LocalDate> daysClosed(YamlNode root) {
        Set<LocalDate> days = new LinkedHashSet<>();
        list(root, "days_closed").forEach(day -> days.add(day.date()));
        return Collections.unmodifiableSet(days);
    }

    private static List<YamlNode> list(YamlNode node, String key) {
        return node.optional(key).map(YamlNode::items).orElse(List.of());
    }

    private static List<String> texts(YamlNode list) {
        List<String> texts = new ArrayList<>();
        list.items().forEach(item -> texts.add(item.text()));
        return List.copyOf(texts);
    }

    private static String text(YamlNode node, String key) {
        return node.optional(key).map(YamlNode::text).orElse("");
    }
}
