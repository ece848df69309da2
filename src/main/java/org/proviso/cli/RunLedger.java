package org.proviso.cli;

import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.chain.Chain;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.chain.Salt;
import org.proviso.core.chain.Sha256;

/**
 * The ledger of a run: which election, under which rules, and what was said of each envelope. It can be shown to
 * observers: voters and facts stand in it as salted hashes only. The salt of an envelope comes from its receipt
 * number, which is in the case and on the voter's receipt and nowhere in the ledger.
 */
final class RunLedger {

    private static final String ACTOR = "adjudicate";

    private final AdjudicationRun run;
    private final String at;
    private final Chain chain = new Chain();

    private RunLedger(AdjudicationRun run) {
        this.run = run;
        this.at = run.asOf().atZone(run.election().zone()).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    /** The exported ledger, one entry a line. */
    static String of(AdjudicationRun run) {
        RunLedger ledger = new RunLedger(run);
        ledger.election();
        ledger.rules();
        run.cases().forEach(ledger::assessed);
        ledger.closed();
        return ledger.chain.entries().stream().map(LedgerEntry::line).collect(Collectors.joining("\n", "", "\n"));
    }

    private void election() {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("name", run.election().name());
        payload.put("date", run.election().date().toString());
        payload.put("voters", run.folder().voters().size());
        payload.put("envelopes", run.folder().envelopes().size());
        if (!run.folder().setAside().isEmpty()) {
            payload.put("set_aside", new TreeMap<>(run.folder().setAside()));
        }
        record("election_read", run.election().id().value(), payload);
    }

    private void rules() {
        record(
                "rules_resolved",
                run.pack().pack().id(),
                Map.of(
                        "hash", run.pack().hash(),
                        "illustrative", run.pack().pack().illustrative(),
                        "engine_version", Assessment.ENGINE_VERSION));
    }

    private void assessed(CaseReport report) {
        Salt salt = new Salt(
                run.election().id() + "/" + ReceiptNumber.text(report.envelope().receiptNo()));
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("recommendation", report.recommendation().words());
        payload.put("outlook", report.outlook().outcome().recommendation().words());
        payload.put(
                "reasons",
                report.outlook().outcome().reasons().stream().map(Code::code).toList());
        payload.put("asks", report.asks().stream().map(ask -> ask.ask().code()).toList());
        payload.put("held_apart", report.presumed().heldApart());
        payload.put("facts", salt.hash(spelled(report.presumed().facts())));
        payload.put(
                "voter",
                report.link().voterId() == null
                        ? ""
                        : salt.hash(report.link().voterId().value()));
        record("envelope_assessed", report.envelope().envelopeNo().value(), payload);
    }

    private void closed() {
        Map<String, Object> counts = new TreeMap<>();
        run.cases()
                .forEach(report -> counts.merge(
                        report.outlook().outcome().recommendation().words(), 1, (a, b) -> (int) a + (int) b));
        record("run_closed", run.election().id().value(), Map.of("outlooks", counts));
    }

    private void record(String act, String subject, Map<String, Object> payload) {
        chain.record(at, ACTOR, act, subject, payload);
    }

    /** The facts in one spelling, so that the same facts have the same hash. */
    private static String spelled(CaseFacts facts) {
        Map<String, String> lines = new TreeMap<>();
        facts.findings()
                .forEach((fact, finding) -> lines.put(
                        fact.key(),
                        finding.words() == null
                                ? "unknown"
                                : finding.words().stream()
                                        .map(Code::code)
                                        .sorted()
                                        .collect(Collectors.joining(","))));
        List<String> spelled = lines.entrySet().stream()
                .map(line -> line.getKey() + "=" + line.getValue())
                .toList();
        return Sha256.of(String.join("\n", spelled));
    }
}
