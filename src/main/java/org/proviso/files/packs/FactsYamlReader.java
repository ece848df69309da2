package org.proviso.files.packs;

import java.io.Reader;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.CountyRuling;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.IdentificationFact;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Finding;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.files.InputException;
import org.proviso.files.election.ElectionYamlReader;
import org.proviso.files.yaml.YamlDocument;
import org.proviso.files.yaml.YamlNode;

/**
 * The facts of one case from a YAML file: under {@code facts} each fact with its word (a list where several may hold),
 * or {@code unknown}; a fact left out is unknown. What was brought later is written with its stamp, which decides.
 */
public final class FactsYamlReader {

    /** Facts that may be told by a stamp instead of by a word, and the two words it turns into. */
    private record StampedFact(Ask ask, String word, FactWord inTime, FactWord late) {}

    private static final Map<Fact<?>, StampedFact> STAMPED = Map.of(
            Fact.IDENTIFICATION,
            new StampedFact(
                    Ask.IDENTIFICATION,
                    "supplied",
                    IdentificationFact.SUPPLIED_IN_TIME,
                    IdentificationFact.SUPPLIED_LATE),
            Fact.VOTER_SIGNATURE,
            new StampedFact(
                    Ask.SIGNATURE,
                    "signed_later",
                    SignatureFact.SIGNED_LATER_IN_TIME,
                    SignatureFact.SIGNED_LATER_LATE));

    private final YamlNode root;

    private FactsYamlReader(YamlNode root) {
        this.root = root;
    }

    /** Opens the file; what it says of facts is read once the deadlines are known. */
    public static FactsYamlReader open(Path file) {
        return of(YamlDocument.read(file));
    }

    /** The same from a text, under the name that errors are to give it. */
    public static FactsYamlReader of(String file, Reader text) {
        return of(YamlDocument.read(file, text));
    }

    private static FactsYamlReader of(YamlNode root) {
        root.rejectUnknownKeys("facts", "contests", "notices_sent", "rulings");
        return new FactsYamlReader(root);
    }

    /** County rulings given with the facts. */
    public List<CountyRuling> rulings() {
        return root.optional("rulings").map(YamlNode::items).orElse(List.of()).stream()
                .map(ElectionYamlReader::ruling)
                .toList();
    }

    /** When notices were sent, local to the county. */
    public Map<Ask, LocalDateTime> noticesSent() {
        Map<Ask, LocalDateTime> sent = new EnumMap<>(Ask.class);
        root.optional("notices_sent")
                .ifPresent(node -> node.keys()
                        .forEach(key -> sent.put(
                                Code.find(Ask.class, key)
                                        .orElseThrow(() ->
                                                node.required(key).wrong("is not something a voter may be asked for")),
                                node.required(key).dateTime())));
        return sent;
    }

    /** The facts; a stamp is weighed against the deadline of its ask. */
    public CaseFacts facts(DeadlineBook book) {
        YamlNode facts = root.required("facts");
        Map<Fact<?>, Finding> findings = new LinkedHashMap<>();
        for (String key : facts.keys()) {
            YamlNode node = facts.required(key);
            Fact<?> fact = Fact.find(key)
                    .orElseThrow(() -> node.wrong("is not a fact (assess --describe prints all of them)"));
            findings.put(fact, node.isMap() ? stamped(fact, node, book) : finding(fact, node));
        }
        return new CaseFacts(
                findings,
                root.optional("contests").map(FactsYamlReader::contests).orElse(null));
    }

    private static Finding finding(Fact<?> fact, YamlNode node) {
        if (node.isList()) {
            return listed(fact, node);
        }
        String text = node.text();
        if (text.equals("unknown")) {
            return Finding.UNKNOWN;
        }
        return fact.severalMayHold() && text.equals("none")
                ? new Finding(Set.of(), List.of())
                : Finding.of(word(fact, node));
    }

    private static Finding listed(Fact<?> fact, YamlNode node) {
        if (!fact.severalMayHold()) {
            throw node.wrong("takes one word, not a list");
        }
        Set<FactWord> words = new LinkedHashSet<>();
        node.items().forEach(item -> words.add(word(fact, item)));
        return new Finding(words, List.of());
    }

    private static FactWord word(Fact<?> fact, YamlNode node) {
        String text = node.text();
        Optional<? extends FactWord> found =
                fact.words().stream().filter(word -> word.code().equals(text)).findFirst();
        if (found.isPresent()) {
            return found.get();
        }
        String allowed = fact.words().stream().map(Code::code).collect(Collectors.joining(", "));
        throw node.wrong(InputException.quoted(text) + " is not one of " + allowed + ", unknown");
    }

    private Finding stamped(Fact<?> fact, YamlNode node, DeadlineBook book) {
        node.rejectUnknownKeys("value", "received_at", "recorded_at");
        YamlNode value = node.required("value");
        LocalDateTime received =
                node.optional("received_at").map(YamlNode::dateTime).orElse(null);
        LocalDateTime recorded =
                node.optional("recorded_at").map(YamlNode::dateTime).orElse(null);
        Evidence evidence = new Evidence(EvidenceSource.CURE, "as stated in the file", received, recorded);
        StampedFact stamped = STAMPED.get(fact);
        if (stamped == null || !value.text().equals(stamped.word())) {
            return Finding.of(word(fact, value), evidence);
        }
        if (received == null) {
            throw node.wrong("needs received_at: the stamp decides whether it is in time");
        }
        if (book.waitsForTheMeeting(stamped.ask())) {
            return Finding.of(stamped.inTime(), evidence);
        }
        return book.cure(stamped.ask(), noticesSent().get(stamped.ask()))
                .map(deadline -> Finding.of(inTime(stamped, deadline, received), evidence))
                .orElse(Finding.unknown(evidence));
    }

    private static FactWord inTime(StampedFact stamped, Deadline deadline, LocalDateTime received) {
        return deadline.hasPassed(received) ? stamped.late() : stamped.inTime();
    }

    private static BallotContests contests(YamlNode node) {
        node.rejectUnknownKeys("cast", "right", "federal");
        return new BallotContests(
                ids(node.required("cast")),
                ids(node.required("right")),
                node.optional("federal").map(FactsYamlReader::ids).orElse(Set.of()));
    }

    private static Set<String> ids(YamlNode node) {
        Set<String> ids = new LinkedHashSet<>();
        for (YamlNode item : node.items()) {
            if (!ids.add(item.text())) {
                throw item.wrong(InputException.quoted(item.text()) + " appears twice");
            }
        }
        return ids;
    }
}
