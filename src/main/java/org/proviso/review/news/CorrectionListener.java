package org.proviso.review.news;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.MatchQuery;
import org.proviso.intake.IntakeService;
import org.proviso.intake.correction.EnvelopeCorrected;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseStore;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.VoterGroups;
import org.proviso.roll.RollMatches;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Hears that an envelope was corrected, in the transaction of that act. Where what the match reads was corrected, the
 * envelope is matched again. A voter whom a person settled stays while the match still names that voter, or says what it
 * said before; otherwise the link is set back, and a person has to settle it again.
 */
@Component
class CorrectionListener {

    private static final String BECAUSE = "The envelope was corrected.";

    private final CaseRecheck watch;
    private final CaseStore cases;
    private final LinkStore links;
    private final AnswerStore answers;
    private final VoterGroups groups;
    private final RollMatches matches;
    private final IntakeService intake;
    private final RollService roll;
    private final AccessService access;
    private final ActDoor door;

    CorrectionListener(
            CaseRecheck watch,
            CaseStore cases,
            LinkStore links,
            AnswerStore answers,
            VoterGroups groups,
            RollMatches matches,
            IntakeService intake,
            RollService roll,
            AccessService access,
            ActDoor door) {
        this.watch = watch;
        this.cases = cases;
        this.links = links;
        this.answers = answers;
        this.groups = groups;
        this.matches = matches;
        this.intake = intake;
        this.roll = roll;
        this.access = access;
        this.door = door;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void corrected(EnvelopeCorrected news) {
        EnvelopeKey key = new EnvelopeKey(news.electionId(), news.envelopeNo());
        SortedSet<EnvelopeKey> touched = groups.others(key);
        touched.add(key);
        touched.forEach(cases::lock);
        Envelope now = intake.envelope(key.electionId(), key.envelopeNo()).orElseThrow();
        Optional<LedgerLine> matched = MatchQuery.of(news.before()).equals(MatchQuery.of(now))
                ? Optional.empty()
                : Optional.ofNullable(matchAgain(key, now));
        touched.addAll(groups.others(key));
        Map<EnvelopeKey, List<String>> because = new LinkedHashMap<>();
        touched.forEach(one -> because.put(one, List.of(BECAUSE)));
        Actor by = access.signedIn().actor();
        watch.lookAgain(touched, by, because);
        matched.ifPresent(line -> door.record(by, line));
    }

    /** Links the corrected envelope as the match says now; what the ledger has of it, if anything. */
    private @Nullable LedgerLine matchAgain(EnvelopeKey key, Envelope envelope) {
        Link found = Objects.requireNonNull(
                matches.presumed(key.electionId(), List.of(envelope)).get(key.envelopeNo()),
                "an envelope that is matched has a link");
        Link newest = links.newest(key).orElseThrow();
        if (!newest.isSettled()) {
            if (found.saysTheSame(newest)) {
                return null;
            }
            List<Fact<?>> voided = sameVoter(found, newest) ? List.of() : answers.withdrawOfTheVoter(key);
            insert(key, found, "");
            return voided.isEmpty() ? null : line(key, "findings_set_back", voided);
        }
        boolean stays = (found.voterId() != null && sameVoter(found, newest))
                || links.presumed(key).filter(found::saysTheSame).isPresent();
        if (stays) {
            return null;
        }
        List<Fact<?>> voided = answers.withdrawOfTheVoter(key);
        insert(key, found, BECAUSE);
        cases.save(cases.find(key).orElseThrow().of(null));
        return line(key, "link_set_back", voided);
    }

    private static boolean sameVoter(Link found, Link newest) {
        return Objects.equals(found.voterId(), newest.voterId());
    }

    /** A link that takes the place of a person's says why. */
    private void insert(EnvelopeKey key, Link link, String because) {
        links.insert(key, link, roll.snapshotInUse(key.electionId(), SnapshotKind.ROLL), null, because);
    }

    private LedgerLine line(EnvelopeKey key, String act, List<Fact<?>> voided) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("voided", voided.stream().map(Fact::key).toList());
        intake.salt(key.electionId(), key.envelopeNo()).ifPresent(salt -> payload.put("because", salt.hash(BECAUSE)));
        return LedgerLine.of(
                LedgerChain.of(key.electionId()), act, key.envelopeNo().value(), payload);
    }
}
