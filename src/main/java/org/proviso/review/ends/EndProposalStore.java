package org.proviso.review.ends;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;
import org.proviso.review.CodeListColumn;
import org.proviso.review.Proposal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what is proposed to end without a decision. */
@Repository
public class EndProposalStore {

    /** What is proposed, and what it rests on. */
    public record New(
            Recommendation as, String toCounty, List<Reason> reasons, String legalReference, int assessment) {}

    /** A proposal as its row has it. */
    private record Row(EnvelopeKey key, int number, New proposed, String reasons, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    EndProposalStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public void insert(EnvelopeKey key, New proposed, UserName by) {
        jdbc.sql("""
                        insert into end_proposal (election_id, envelope_no, proposal_no, ends_as, to_county, reasons,
                            legal_reference, assessment_no, proposed_by, proposed_at, state, note)
                        values (:key.electionId, :key.envelopeNo, :number, :proposed.as, :proposed.toCounty, :reasons,
                            :proposed.legalReference, :proposed.assessment, :by, :at, 'standing', '')""")
                .paramSource(new Row(
                        key,
                        newest(key).map(EndProposal::number).orElse(0) + 1,
                        proposed,
                        CodeListColumn.of(proposed.reasons()),
                        by,
                        clock.instant()))
                .update();
    }

    public Optional<EndProposal> newest(EnvelopeKey key) {
        return jdbc.sql("""
                        select p.election_id, p.envelope_no, p.proposal_no as number, p.ends_as as "as", p.to_county,
                            p.reasons, p.legal_reference, p.assessment_no as assessment, p.proposed_by, p.proposed_at,
                            p.state, p.read_by, p.read_at, p.note
                        from end_proposal p where p.election_id = ? and p.envelope_no = ?
                        order by p.proposal_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query(EndProposal.class)
                .optional();
    }

    /** The one that waits for a second person. */
    public Optional<EndProposal> standing(EnvelopeKey key) {
        return newest(key).filter(proposal -> proposal.state() == Proposal.State.STANDING);
    }

    /** A second person read it: it is agreed, or returned with a note. */
    public void read(EndProposal proposal, Proposal.State state, UserName by, String note) {
        jdbc.sql("""
                        update end_proposal set state = ?, read_by = ?, read_at = ?, note = ?
                        where election_id = ? and envelope_no = ? and proposal_no = ?""")
                .params(
                        state.code(),
                        by,
                        clock.instant(),
                        note,
                        proposal.key().electionId(),
                        proposal.key().envelopeNo(),
                        proposal.number())
                .update();
    }

    /** The one that waits, if there is one, waits no more; nobody read it. False where none waited. */
    public boolean endStanding(EnvelopeKey key, Proposal.State state) {
        int ended = jdbc.sql("""
                        update end_proposal set state = ?
                        where election_id = ? and envelope_no = ? and state = 'standing'""")
                .params(state.code(), key.electionId(), key.envelopeNo())
                .update();
        return ended > 0;
    }
}
