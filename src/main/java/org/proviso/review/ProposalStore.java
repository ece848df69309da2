package org.proviso.review;

import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of proposals and of what second readers said of them. */
@Repository
public class ProposalStore {

    private static final String SELECT = """
            select p.election_id, p.envelope_no, p.proposal_no as number, p.outcome as "as", p.reasons,
                p.legal_reference, coalesce(p.departs_because, '') as departs_because, p.assessment_no as assessment,
                p.proposed_by, p.state
            """;

    /** A proposal as its row has it. */
    private record Proposed(
            ProposeOutcome command,
            int number,
            String reasons,
            @Nullable String departs,
            int assessment,
            UserName by,
            Instant at) {}

    /** What a second reader said of a proposal. */
    private record SecondReview(Proposal proposal, UserName by, boolean agrees, String note, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    ProposalStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public void insert(ProposeOutcome command, int assessment, UserName by) {
        EnvelopeKey key = command.key();
        jdbc.sql("""
                        insert into proposal (election_id, envelope_no, proposal_no, outcome, reasons, legal_reference,
                            departs_because, assessment_no, proposed_by, proposed_at, state, version)
                        values (:command.key.electionId, :command.key.envelopeNo, :number, :command.as, :reasons,
                            :command.legalReference, :departs, :assessment, :by, :at, 'standing', 0)""")
                .paramSource(new Proposed(
                        command,
                        newest(key).map(Proposal::number).orElse(0) + 1,
                        CodeListColumn.of(command.reasons()),
                        command.departsBecause().isBlank() ? null : command.departsBecause(),
                        assessment,
                        by,
                        clock.instant()))
                .update();
    }

    public Optional<Proposal> newest(EnvelopeKey key) {
        return jdbc.sql(SELECT + """
                        from proposal p where p.election_id = ? and p.envelope_no = ?
                        order by p.proposal_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query(Proposal.class)
                .optional();
    }

    /** The newest proposal of each of these envelopes with who read it again, by envelope number. */
    public Map<EnvelopeNumber, ReadProposal> newest(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, ReadProposal> newest = new HashMap<>();
        jdbc.sql(SELECT + """
                        , (select r.reviewed_by from second_review r
                             where r.election_id = p.election_id and r.envelope_no = p.envelope_no
                               and r.proposal_no = p.proposal_no and r.agrees
                             order by r.reviewed_at limit 1) as second_read_by
                        from unnest(cast(? as varchar array)) as wanted (id)
                        join proposal p on p.election_id = ? and p.envelope_no = wanted.id order by p.proposal_no""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query(ReadProposal.class)
                .list()
                .forEach(row -> newest.put(row.proposal().key().envelopeNo(), row));
        return newest;
    }

    public void end(Proposal proposal, Proposal.State state) {
        jdbc.sql("""
                        update proposal set state = ?, version = version + 1
                        where election_id = ? and envelope_no = ? and proposal_no = ?""")
                .params(
                        state.code(),
                        proposal.key().electionId(),
                        proposal.key().envelopeNo(),
                        proposal.number())
                .update();
    }

    public void review(Proposal proposal, UserName by, boolean agrees, String note) {
        jdbc.sql("""
                        insert into second_review (election_id, envelope_no, proposal_no, proposed_by, reviewed_by,
                            agrees, note, reviewed_at)
                        values (:proposal.key.electionId, :proposal.key.envelopeNo, :proposal.number,
                            :proposal.proposedBy, :by, :agrees, :note, :at)""")
                .paramSource(new SecondReview(proposal, by, agrees, note, clock.instant()))
                .update();
    }

    /** What is proposed of every case that waits for the decider, by envelope number. */
    public List<ReadyCase> ready(ElectionId electionId) {
        return jdbc.sql(SELECT + """
                        , c.version,
                            (select min(r.reviewed_by) from second_review r
                             where r.election_id = p.election_id and r.envelope_no = p.envelope_no
                               and r.proposal_no = p.proposal_no and r.agrees) as second_read_by
                        from envelope_case c
                        join proposal p on p.election_id = c.election_id and p.envelope_no = c.envelope_no
                        where c.election_id = ? and c.state = 'ready' and p.state in ('standing', 'agreed')
                        order by c.envelope_no""").param(electionId).query(ReadyCase.class).list();
    }
}
