package org.proviso.core.adjudication.finding;

import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;

/** Collects findings while the facts of a case are gathered. */
final class FindingMap {

    private final Map<Fact<?>, Finding> findings = new LinkedHashMap<>();

    <V extends Enum<V> & FactWord> void put(Fact<V> fact, V word, EvidenceSource source, String words) {
        findings.put(fact, Finding.of(word, Evidence.of(source, words)));
    }

    <V extends Enum<V> & FactWord> void put(Fact<V> fact, V word, Evidence... evidence) {
        findings.put(fact, Finding.of(word, evidence));
    }

    void put(Fact<?> fact, Finding finding) {
        findings.put(fact, finding);
    }

    void unknown(Fact<?> fact, EvidenceSource source, String words) {
        findings.put(fact, Finding.unknown(Evidence.of(source, words)));
    }

    void keep(Map<Fact<?>, Finding> more) {
        findings.putAll(more);
    }

    Map<Fact<?>, Finding> findings() {
        return findings;
    }
}
