package org.proviso.board;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.proviso.access.OfficeUser;
import org.proviso.access.StaffList;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.chain.Salt;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Component;

/** Words what the deciding bodies do for the chain of the election: codes, numbers and pseudonyms only. */
@Component
public class BoardLedger {

    private final IntakeService intake;
    private final StaffList staff;

    BoardLedger(IntakeService intake, StaffList staff) {
        this.intake = intake;
        this.staff = staff;
    }

    public LedgerLine line(String act, SessionKey session, String subject, Map<String, Object> more) {
        Map<String, Object> payload = new TreeMap<>(more);
        payload.put("session", session.sessionNo());
        return LedgerLine.of(LedgerChain.of(session.electionId()), act, subject, payload);
    }

    /** The same of a session itself. */
    public LedgerLine line(String act, SessionKey session, Map<String, Object> more) {
        return line(act, session, session.subject(), more);
    }

    /** The pseudonym of a member. */
    public String pseudonym(UserName userName) {
        return staff.user(userName)
                .map(OfficeUser::actor)
                .map(Actor::pseudonym)
                .orElseThrow(() -> new IllegalStateException("no account " + userName));
    }

    /** A text that the ledger must not show, as a hash for each of the envelopes it is about; none after a purge. */
    public List<String> hashes(SessionKey session, List<EnvelopeNumber> envelopes, String text) {
        Map<EnvelopeNumber, Salt> salts = intake.salts(session.electionId(), envelopes);
        return envelopes.stream()
                .map(envelope -> Optional.ofNullable(salts.get(envelope))
                        .map(salt -> salt.hash(text))
                        .orElse(""))
                .toList();
    }

    /** The same for one envelope. */
    String hash(SessionKey session, EnvelopeNumber envelope, String text) {
        return hashes(session, List.of(envelope), text).get(0);
    }
}
