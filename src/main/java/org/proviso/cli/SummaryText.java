package org.proviso.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.Transmittal;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.explain.OutcomeSymbol;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;
import org.proviso.files.SetAsideCount;

/** A run on one page: how many envelopes stand where and why, what is due when, and which bags do not add up. */
final class SummaryText {

    private final AdjudicationRun run;
    private final StringBuilder text = new StringBuilder();

    private SummaryText(AdjudicationRun run) {
        this.run = run;
    }

    static String of(AdjudicationRun run) {
        SummaryText summary = new SummaryText(run);
        summary.heading();
        summary.recommendations();
        summary.reasons();
        summary.asks();
        summary.toDo();
        summary.bags();
        summary.deadlines();
        summary.decider();
        summary.close();
        return summary.text.toString();
    }

    private void heading() {
        line(run.election().name() + ", " + DateWords.longDate(run.election().date()));
        line(run.cases().size() + " envelopes, assessed as of " + DateWords.moment(run.asOf()) + " under rule pack "
                + run.pack().pack().id() + " " + run.pack().hash().substring(0, 12) + ".");
    }

    private void recommendations() {
        Map<Recommendation, Integer> now = new EnumMap<>(Recommendation.class);
        Map<Recommendation, Integer> outlook = new EnumMap<>(Recommendation.class);
        for (CaseReport report : run.cases()) {
            now.merge(report.recommendation(), 1, Integer::sum);
            outlook.merge(report.outlook().outcome().recommendation(), 1, Integer::sum);
        }
        title("Where the envelopes stand");
        line(String.format("  %-22s %9s %9s", "", "now", "outlook"));
        for (Recommendation recommendation : Recommendation.values()) {
            row(
                    OutcomeSymbol.beside(recommendation),
                    now.getOrDefault(recommendation, 0),
                    outlook.getOrDefault(recommendation, 0));
        }
        row("total", run.cases().size(), run.cases().size());
        line(
                "  Now: no links have been confirmed and no signatures compared yet, so nearly all are research. Outlook: what");
        line("  the rules will say if the open questions are answered as the records suggest. Neither is a decision.");
        long apart = run.cases().stream()
                .filter(report -> report.presumed().heldApart())
                .count();
        if (apart > 0) {
            line("  " + apart + " envelopes were cast in hours extended by a court and are held apart.");
        }
    }

    private void row(String label, int now, int outlook) {
        line(String.format("  %-22s %9d %9d", label, now, outlook));
    }

    private void reasons() {
        Map<Reason, Integer> first = new LinkedHashMap<>();
        run.cases()
                .forEach(report -> report.outlook().outcome().reasons().stream()
                        .findFirst()
                        .ifPresent(reason -> first.merge(reason, 1, Integer::sum)));
        title("First reason, where a ballot does not simply count");
        first.entrySet().stream()
                .sorted(Map.Entry.<Reason, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(entry -> line(String.format(
                        "  %4d  %s", entry.getValue(), entry.getKey().words())));
    }

    private void asks() {
        title("Notices due now");
        Map<Ask, Integer> asks = new EnumMap<>(Ask.class);
        run.cases().forEach(report -> report.asks().forEach(ask -> asks.merge(ask.ask(), 1, Integer::sum)));
        asks.forEach((ask, count) -> line(String.format("  %4d  %s", count, ask.words()) + until(ask)));
        if (asks.isEmpty()) {
            line("  none");
        }
    }

    private String until(Ask ask) {
        return run.book()
                .of(Rule.cure(ask))
                .map(deadline -> ", until " + DateWords.moment(deadline.lastMoment()))
                .orElse("");
    }

    private void toDo() {
        title("Still to do");
        Map<String, Integer> open = new LinkedHashMap<>();
        run.cases().forEach(report -> report.stillOpen().forEach(question -> open.merge(question, 1, Integer::sum)));
        open.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .forEach(entry -> line(String.format("  %4d  %s", entry.getValue(), entry.getKey())));
    }

    private void bags() {
        title("Bags out of balance");
        Map<String, Integer> received = new LinkedHashMap<>();
        run.folder().envelopes().forEach(envelope -> {
            if (!envelope.cast().votingLocation().isEmpty()) {
                received.merge(envelope.cast().votingLocation(), 1, Integer::sum);
            }
        });
        List<String> faults = new ArrayList<>();
        Map<String, Integer> sent = new LinkedHashMap<>();
        for (Transmittal bag : run.folder().transmittals()) {
            sent.merge(bag.votingLocation(), bag.returned(), Integer::sum);
            seals(bag).ifPresent(faults::add);
        }
        received.forEach((place, count) -> {
            if (!sent.containsKey(place)) {
                faults.add(place + ": " + count + " envelopes were received, but no transmittal.");
            }
        });
        sent.forEach((place, count) -> {
            int here = received.getOrDefault(place, 0);
            if (here != count) {
                faults.add(place + " reported " + count + " envelopes returned; " + here + " were received.");
            }
        });
        faults.stream().sorted(Comparator.naturalOrder()).forEach(fault -> line("  " + fault));
        if (faults.isEmpty()) {
            line("  none");
        }
    }

    private static Optional<String> seals(Transmittal bag) {
        if (bag.sealOut().equals(bag.sealIn())) {
            return bag.issued() == bag.returned() + bag.spoiled()
                    ? Optional.empty()
                    : Optional.of(bag.votingLocation() + " issued " + bag.issued() + ", spoiled " + bag.spoiled()
                            + " and returned " + bag.returned() + ".");
        }
        return Optional.of(
                bag.votingLocation() + ": seal " + bag.sealOut() + " went out, seal " + bag.sealIn() + " came back.");
    }

    private void deadlines() {
        title("Deadlines");
        deadline("Mail ballots due by", Rules.MAIL_RECEIPT);
        deadline("Every envelope decided by", Rules.DECISION);
        deadline("The county certifies by", Rules.CERTIFICATION);
    }

    private void deadline(String label, Rule rule) {
        String words = run.book()
                .of(rule)
                .map(deadline -> DateWords.longDate(deadline.day()) + ", " + DateWords.hour(deadline.lastMoment()))
                .orElse(run.pack().of(rule).isKnown() ? "none" : "not in the rule pack");
        line(String.format("  %-30s %s", label, words));
    }

    private void decider() {
        title("Who decides, and earliest times");
        line("  Decider: " + word(Rules.DECIDER) + " of "
                + run.election().decider().members() + ", quorum "
                + run.election().decider().quorum() + "; a rejection needs: " + word(Rules.VOTE_TO_REJECT)
                + "; a tie means: " + word(Rules.TIE_MEANS) + "; a failed motion means: "
                + word(Rules.FAILED_MOTION_MEANS) + ".");
        deadline("Review no earlier than", Rules.GATE_REVIEW);
        deadline("Decide no earlier than", Rules.GATE_DECISION);
        deadline("Open no earlier than", Rules.GATE_OPEN);
        if (run.pack().isYes(Rules.OPEN_AFTER_ALL_OTHERS)) {
            line("  Envelopes stay sealed until mail and in-person counting is complete.");
        }
    }

    private String word(Rule rule) {
        return run.pack().of(rule).value().inWords();
    }

    private void close() {
        if (!run.folder().setAside().isEmpty()) {
            title("Rows set aside");
            line("  " + SetAsideCount.words(run.folder().setAside())
                    + ". What these rows say is not known here: a voter");
            line("  of the roll may not be found, and a second ballot may not be seen.");
        }
        if (!run.folder().warnings().isEmpty()) {
            title("File warnings");
            run.folder().warnings().forEach(warning -> line("  " + warning));
        }
        line("");
        line(run.pack().pack().caution());
    }

    private void title(String title) {
        line("");
        line(title);
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
