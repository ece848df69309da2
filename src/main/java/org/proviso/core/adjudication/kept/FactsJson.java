package org.proviso.core.adjudication.kept;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Finding;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.Ask;

/** The facts of a case as canonical JSON, evidence and contests included; the same facts are the same text. */
public final class FactsJson {

    private FactsJson() {}

    /** A fact that is unknown although something was checked has evidence and no values. */
    public static String write(KeptFacts kept) {
        Map<String, Object> text = new HashMap<>();
        Map<String, Object> facts = new HashMap<>();
        kept.facts().findings().forEach((fact, finding) -> facts.put(fact.key(), finding(fact, finding)));
        text.put("facts", facts);
        if (kept.facts().contests() != null) {
            text.put("contests", contests(kept.facts().contests()));
        }
        text.put(
                "notices_sent",
                kept.noticesSent().entrySet().stream()
                        .collect(Collectors.toMap(
                                sent -> sent.getKey().code(),
                                sent -> sent.getValue().toString())));
        text.put(
                "days_closed",
                kept.daysClosed().stream().sorted().map(LocalDate::toString).toList());
        put(text, "board_meeting", kept.meeting());
        return CanonicalJson.of(text);
    }

    /** The facts that were written; a text that is not of facts is an {@link IllegalArgumentException}. */
    public static KeptFacts read(String text) {
        KeptFields fields = new KeptFields(CanonicalJsonReader.object(text));
        Map<Fact<?>, Finding> findings = new LinkedHashMap<>();
        KeptFields facts = fields.object("facts");
        for (String key : facts.names()) {
            Fact<?> fact = Fact.find(key)
                    .orElseThrow(
                            () -> new IllegalArgumentException("\"" + key + "\" is not a fact this version knows"));
            findings.put(fact, finding(fact, facts.object(key)));
        }
        CaseFacts found = new CaseFacts(findings, fields.has("contests") ? contests(fields.object("contests")) : null);
        Set<LocalDate> closed = new LinkedHashSet<>();
        fields.texts("days_closed").forEach(day -> closed.add(LocalDate.parse(day)));
        return new KeptFacts(
                found,
                notices(fields.object("notices_sent")),
                closed,
                fields.optional("board_meeting", LocalDateTime::parse));
    }

    private static Map<String, Object> finding(Fact<?> fact, Finding finding) {
        Map<String, Object> text = new HashMap<>();
        if (finding.words() != null) {
            Set<? extends FactWord> words = finding.words();
            text.put(
                    "words",
                    fact.words().stream()
                            .filter(words::contains)
                            .map(Code::code)
                            .toList());
        }
        text.put(
                "evidence", finding.evidence().stream().map(FactsJson::evidence).toList());
        return text;
    }

    private static Finding finding(Fact<?> fact, KeptFields fields) {
        List<Evidence> evidence =
                fields.objects("evidence").stream().map(FactsJson::evidence).toList();
        return new Finding(fields.has("words") ? words(fact, fields.texts("words")) : null, evidence);
    }

    private static Set<FactWord> words(Fact<?> fact, List<String> codes) {
        Set<FactWord> words = new LinkedHashSet<>();
        for (String code : codes) {
            words.add(fact.words().stream()
                    .filter(word -> word.code().equals(code))
                    .findFirst()
                    .orElseThrow(() ->
                            new IllegalArgumentException("\"" + code + "\" is not a value of the fact " + fact.key())));
        }
        return words;
    }

    private static Map<String, Object> evidence(Evidence evidence) {
        Map<String, Object> text = new HashMap<>();
        text.put("source", evidence.source().code());
        text.put("words", evidence.words());
        put(text, "received_at", evidence.receivedAt());
        put(text, "recorded_at", evidence.recordedAt());
        return text;
    }

    private static void put(Map<String, Object> text, String name, @Nullable LocalDateTime moment) {
        if (moment != null) {
            text.put(name, moment.toString());
        }
    }

    private static Evidence evidence(KeptFields fields) {
        return new Evidence(
                fields.code("source", EvidenceSource.class),
                fields.text("words"),
                fields.optional("received_at", LocalDateTime::parse),
                fields.optional("recorded_at", LocalDateTime::parse));
    }

    /** In the order of the ballot, which is the order in which the contests that count are named. */
    private static Map<String, Object> contests(BallotContests contests) {
        return Map.of(
                "cast", List.copyOf(contests.cast()),
                "right", List.copyOf(contests.right()),
                "federal", List.copyOf(new TreeSet<>(contests.federal())));
    }

    private static BallotContests contests(KeptFields fields) {
        return new BallotContests(fields.set("cast"), fields.set("right"), fields.set("federal"));
    }

    private static Map<Ask, LocalDateTime> notices(KeptFields fields) {
        Map<Ask, LocalDateTime> notices = new EnumMap<>(Ask.class);
        for (String ask : fields.names()) {
            notices.put(KeptFields.code(Ask.class, ask), LocalDateTime.parse(fields.text(ask)));
        }
        return notices;
    }
}
