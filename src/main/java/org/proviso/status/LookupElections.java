package org.proviso.status;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.proviso.board.SessionChanged;
import org.proviso.core.Election;
import org.proviso.core.Election.Receipts;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.RulePack;
import org.proviso.election.ElectionLoaded;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesChanged;
import org.proviso.election.RulesService;
import org.proviso.election.orders.CourtOrderRecorded;
import org.proviso.files.packs.RulePacks;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

/** What look-ups need to know of elections: read once, and again after the act that changed it. Thread-safe. */
@Component
class LookupElections {

    private static final String ALL = "";
    private static final String FEDERAL_FLOOR = "us";

    private final ElectionService elections;
    private final RulesService rules;
    private final StatusSessionStore sessions;
    private final RulePack floor = RulePacks.load(FEDERAL_FLOOR);
    private final ExpiringCache<LookupElection> known;
    private final ExpiringCache<Optional<LookupPageInfo>> office;

    LookupElections(ElectionService elections, RulesService rules, StatusSessionStore sessions, Clock clock) {
        this.elections = elections;
        this.rules = rules;
        this.sessions = sessions;
        this.known = new ExpiringCache<>(clock);
        this.office = new ExpiringCache<>(clock);
    }

    LookupElection of(ElectionId electionId) {
        return known.get(
                electionId.value(),
                () -> LookupElection.of(
                        elections.find(electionId).orElseThrow(),
                        rules.book(electionId),
                        floor,
                        sessions.all(electionId)));
    }

    /** Empty before there is an election. */
    Optional<LookupPageInfo> office() {
        return office.get(ALL, this::newest);
    }

    private Optional<LookupPageInfo> newest() {
        List<Election> all = elections.all().stream()
                .flatMap(id -> elections.find(id).stream())
                .toList();
        return all.stream()
                .findFirst()
                .map(newest -> new LookupPageInfo(
                        newest.office(),
                        newest.name(),
                        newest.receipts() == Receipts.CHECK_DIGIT,
                        all.stream().allMatch(election -> election.receipts() == Receipts.CHECK_DIGIT)));
    }

    @TransactionalEventListener(
            classes = {ElectionLoaded.class, CourtOrderRecorded.class, RulesChanged.class, SessionChanged.class},
            phase = TransactionPhase.AFTER_COMMIT)
    void forget() {
        known.forget();
        office.forget();
    }
}
