package org.proviso.core.adjudication.finding;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Address;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckIn;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.MailBallot;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.rules.Ask;

/**
 * Everything the office holds about an election, as the fact finder asks for it. An election folder and the database
 * both implement it, so that the command line and the screens cannot differ.
 */
public interface Records {

    Election election();

    Optional<Voter> voter(VoterId voterId);

    /** Every mail ballot sent to the voter, in the order of the file. */
    List<MailBallot> mailBallots(VoterId voterId);

    List<CheckIn> checkIns(VoterId voterId);

    /** Lines of the state's list that resemble this voter or what the envelope says; none of them confirmed. */
    List<VotedElsewhere> votedElsewhere(Envelope envelope, Optional<Voter> voter);

    /** All envelopes linked or presumed linked to the voter, the one asked about among them. */
    List<Envelope> envelopesOf(VoterId voterId);

    Optional<BallotStyle> style(String style);

    /** The rows of a precinct part: one, or in a primary one for each party. */
    List<PrecinctPart> rows(PrecinctId part);

    LocatedAddress locate(Address address);

    /** Whether two addresses as written are the same house and street. */
    boolean sameAddress(Address address, Address other);

    /** Whether an address as written may be a misspelling of the other: the same house, and a street one error away. */
    boolean differsByASlip(Address written, Address other);

    Set<String> federalContests();

    List<CureEvidence> cureEvidence(EnvelopeNumber envelopeNo);

    /** What persons recorded of the case, the newest last. */
    List<RecordedFact> recorded(EnvelopeNumber envelopeNo);

    /** When the notice of each ask was logged as sent, local to the county. */
    Map<Ask, LocalDateTime> noticesSent(EnvelopeNumber envelopeNo);

    /** The title of a contest, as the ballot has it. */
    String contestTitle(String contestId);
}
