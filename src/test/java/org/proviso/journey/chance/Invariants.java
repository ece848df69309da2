package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.ID;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.Permission;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.ClosingReport;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposalStore;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.ends.EndProposalStore;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.replay.AssessmentReplay;
import org.proviso.review.replay.CaseReplay;

/** What must hold after every act of a play; each check gives sentences for what does not. */
final class Invariants {

    private static final LedgerChain CHAIN = LedgerChain.of(ID);

    /** Which permission each act on a case takes; the acts of time and files need nobody. */
    private static final Map<CaseAct, Permission> NEEDED = new EnumMap<>(Map.ofEntries(
            Map.entry(CaseAct.KEY, Permission.KEY_ENVELOPES),
            Map.entry(CaseAct.TAKE, Permission.PROPOSE),
            Map.entry(CaseAct.GIVE_BACK, Permission.PROPOSE),
            Map.entry(CaseAct.PROPOSE_COUNT, Permission.PROPOSE),
            Map.entry(CaseAct.PROPOSE_LESS, Permission.PROPOSE),
            Map.entry(CaseAct.WITHDRAW, Permission.PROPOSE),
            Map.entry(CaseAct.AGREE, Permission.SECOND_REVIEW),
            Map.entry(CaseAct.RETURN, Permission.SECOND_REVIEW),
            Map.entry(CaseAct.DECIDE, Permission.VOTE),
            Map.entry(CaseAct.ORDER, Permission.RECORD_ORDERS),
            Map.entry(CaseAct.REOPEN, Permission.DECIDE),
            Map.entry(CaseAct.PROPOSE_END, Permission.PROPOSE),
            Map.entry(CaseAct.SEND_ON, Permission.SECOND_REVIEW),
            Map.entry(CaseAct.END, Permission.SECOND_REVIEW),
            Map.entry(CaseAct.RELEASE, Permission.OPEN_ENVELOPES)));

    private final ChanceOffice office;
    private long last;
    private String lastHash;

    Invariants(ChanceOffice office) {
        this.office = office;
        this.last = office.the(LedgerService.class).head(CHAIN).sequence();
        this.lastHash = office.the(LedgerService.class).head(CHAIN).hash();
    }

    /** After an act: {@code accepted} whether it was recorded, {@code entered} whether it must have an entry. */
    List<String> afterAct(boolean accepted, boolean entered) {
        List<String> wrong = new ArrayList<>();
        ledger(wrong, accepted, entered);
        List<EnvelopeCase> cases = office.cases();
        Map<EnvelopeNumber, Decision> standing =
                office.the(DecisionService.class).standing(ID);
        nobodyCountsTwice(wrong, cases, standing);
        Set<EnvelopeNumber> proposed = proposed(cases);
        cases.forEach(one ->
                sound(wrong, one, Optional.ofNullable(standing.get(one.key().envelopeNo())), proposed));
        openedIsDecided(wrong);
        office.figures()
                .differences(office.read(
                        "carl", () -> office.the(CanvassService.class).accounts(ID)))
                .forEach((figure, words) -> wrong.add(figure.code() + ": " + words));
        return wrong;
    }

    /** What is new links on to what was there; a refused act leaves nothing. */
    private void ledger(List<String> wrong, boolean accepted, boolean entered) {
        List<LedgerEntry> added = office.the(LedgerService.class).read(CHAIN, last, 1_000);
        if (accepted && entered && added.isEmpty()) {
            wrong.add("the act has no entry in the ledger");
        }
        if (!accepted && !added.isEmpty()) {
            wrong.add("nothing was done, and the ledger says " + added.get(0).act());
        }
        for (LedgerEntry entry : added) {
            if (entry.sequence() != last + 1 || !entry.previousHash().equals(lastHash)) {
                wrong.add("entry " + entry.sequence() + " does not follow the one before it");
            }
            last = entry.sequence();
            lastHash = entry.hash();
        }
    }

    private void nobodyCountsTwice(
            List<String> wrong, List<EnvelopeCase> cases, Map<EnvelopeNumber, Decision> standing) {
        Map<String, EnvelopeNumber> counted = new HashMap<>();
        Map<EnvelopeNumber, Link> links = office.the(LinkStore.class).newest(ID, standing.keySet());
        for (EnvelopeCase one : cases) {
            EnvelopeNumber number = one.key().envelopeNo();
            Decision decision = standing.get(number);
            if (decision != null && decision.as() != DecisionOutcome.REJECT) {
                VoterId voter = links.containsKey(number) ? links.get(number).voterId() : null;
                twice(wrong, counted, "person " + one.personId(), number);
                if (voter != null) {
                    twice(wrong, counted, "voter " + voter, number);
                }
                if (one.countedPerson() == null) {
                    wrong.add(number + " counts for nobody");
                }
            }
        }
    }

    private static void twice(
            List<String> wrong, Map<String, EnvelopeNumber> counted, String who, EnvelopeNumber number) {
        EnvelopeNumber before = counted.put(who, number);
        if (before != null) {
            wrong.add(who + " counts twice: " + before + " and " + number);
        }
    }

    /** Those of which a proposal stands. */
    private Set<EnvelopeNumber> proposed(List<EnvelopeCase> cases) {
        Set<EnvelopeNumber> proposed = new HashSet<>();
        List<EnvelopeNumber> numbers =
                cases.stream().map(one -> one.key().envelopeNo()).toList();
        office.the(ProposalStore.class).newest(ID, numbers).forEach((number, read) -> {
            if (read.proposal().stands()) {
                proposed.add(number);
            }
        });
        cases.stream()
                .filter(one -> one.state() == CaseState.PROPOSED)
                .filter(one ->
                        office.the(EndProposalStore.class).standing(one.key()).isPresent())
                .forEach(one -> proposed.add(one.key().envelopeNo()));
        return proposed;
    }

    /** The state of a case fits what else is known of it, and there is somebody who can lead it on. */
    private static void sound(
            List<String> wrong, EnvelopeCase one, Optional<Decision> decision, Set<EnvelopeNumber> proposals) {
        EnvelopeNumber number = one.key().envelopeNo();
        CaseState state = one.state();
        boolean settled = state == CaseState.DECIDED || state == CaseState.RELEASED;
        if (settled != decision.isPresent()) {
            wrong.add(number + " is " + state.spoken() + ", and its decision: " + decision.map(Decision::as));
        }
        if ((state == CaseState.IN_REVIEW) != (one.takenBy() != null)) {
            wrong.add(number + " is " + state.spoken() + " with " + one.takenBy());
        }
        boolean proposed = state == CaseState.PROPOSED || state == CaseState.READY;
        if (proposed && !proposals.contains(number)) {
            wrong.add(number + " is " + state.spoken() + " without a proposal");
        }
        boolean onward = CaseGraph.all().stream()
                .filter(edge -> edge.from() == state && NEEDED.containsKey(edge.act()))
                .anyMatch(
                        edge -> !ChanceOffice.permitted(NEEDED.get(edge.act())).isEmpty());
        if (!onward && state != CaseState.RELEASED) {
            wrong.add(number + " is " + state.spoken() + ", and nobody can lead it on");
        }
    }

    private void openedIsDecided(List<String> wrong) {
        office.services()
                .jdbc()
                .sql("""
                        select e.envelope_no || ' is open in batch ' || b.batch_no || ' and ' || c.state
                        from release_batch b
                            join batch_envelope e on e.election_id = b.election_id and e.batch_no = b.batch_no
                            join envelope_case c on c.election_id = e.election_id and c.envelope_no = e.envelope_no
                        where b.election_id = ? and b.opened_at is not null
                            and (c.state <> 'released' or c.counted_person is null)""")
                .param(ID.value())
                .query(String.class)
                .list()
                .forEach(wrong::add);
    }

    /** The page of what is missing is empty if and only if closing is not refused. */
    List<String> closing() {
        ClosingReport report =
                office.read("carl", () -> office.the(CanvassService.class).missing(ID));
        return report.isEmpty() == report.missing().isEmpty()
                ? List.of()
                : List.of("closing is refused for " + report.open() + " and the page says " + report.missing());
    }

    /** The whole chain, every case by it, and every assessment made again. */
    List<String> whole() {
        List<String> wrong = new ArrayList<>(closing());
        office.the(LedgerService.class).verify(CHAIN).fault().ifPresent(fault -> wrong.add("the ledger: " + fault));
        office.the(CaseReplay.class).replay(ID).first().forEach(difference -> wrong.add("replay: " + difference));
        return wrong;
    }

    /** The same with every assessment made again. */
    List<String> atTheEnd() {
        List<String> wrong = whole();
        var verdict = office.the(AssessmentReplay.class).replay(ID);
        if (verdict.differing() > 0) {
            wrong.add("assessments made again differ: " + verdict.first());
        }
        return wrong;
    }
}
