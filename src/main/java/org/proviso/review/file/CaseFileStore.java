package org.proviso.review.file;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CodeListColumn;
import org.proviso.review.Proposal;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.SearchFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who did what to a case and when, by name, out of the tables of cases. */
@Repository
class CaseFileStore {

    private final JdbcClient jdbc;

    CaseFileStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<LocalDateTime> takenAt(EnvelopeKey key, ZoneId county) {
        return jdbc.sql("""
                        select taken_at from envelope_case
                        where election_id = ? and envelope_no = ? and taken_at is not null""")
                .params(key.electionId(), key.envelopeNo())
                .query(OffsetDateTime.class)
                .optional()
                .map(at -> local(at, county));
    }

    List<SearchSummary> searches(EnvelopeKey key, ZoneId county) {
        return jdbc.sql("""
                        select s.found, s.note, u.full_name, s.searched_at, s.taken_back_because from voter_search s
                        join office_user u on u.user_name = s.searched_by
                        where s.election_id = ? and s.envelope_no = ? order by s.search_no""")
                .params(key.electionId(), key.envelopeNo())
                .query((row, number) -> new SearchSummary(
                        Code.find(SearchFound.class, row.getString("found")).orElseThrow(),
                        row.getString("note"),
                        row.getString("full_name"),
                        local(row.getObject("searched_at", OffsetDateTime.class), county),
                        Objects.requireNonNullElse(row.getString("taken_back_because"), "")))
                .list();
    }

    /**
     * Every time the case came back, the newest first: by whom and in which words, those of second reviewers among them.
     */
    List<CaseFile.ReturnDetails> cameBack(EnvelopeKey key, ZoneId county) {
        return jdbc.sql("""
                        select b.kind, b.because, coalesce(u.full_name, '') as full_name, b.at from (
                            select kind, because, returned_by as who, returned_at as at from case_return
                            where election_id = :election and envelope_no = :envelope
                            union all
                            select 'second_reader', note, reviewed_by, reviewed_at from second_review
                            where election_id = :election and envelope_no = :envelope and not agrees
                            union all
                            select 'second_reader', note, read_by, read_at from end_proposal
                            where election_id = :election and envelope_no = :envelope and state = 'returned'
                                and read_by is not null) b
                        left join office_user u on u.user_name = b.who order by b.at desc""")
                .param("election", key.electionId())
                .param("envelope", key.envelopeNo())
                .query((row, number) -> new CaseFile.ReturnDetails(
                        Code.find(CaseReturn.Kind.class, row.getString("kind")).orElseThrow(),
                        row.getString("because"),
                        row.getString("full_name"),
                        local(row.getObject("at", OffsetDateTime.class), county)))
                .list();
    }

    ProposalDetails proposed(Proposal proposal, UserName reader, ZoneId county) {
        EnvelopeKey key = proposal.key();
        return jdbc.sql("""
                        select u.full_name, p.proposed_at from proposal p
                        join office_user u on u.user_name = p.proposed_by
                        where p.election_id = ? and p.envelope_no = ? and p.proposal_no = ?""")
                .params(key.electionId(), key.envelopeNo(), proposal.number())
                .query((row, number) -> new ProposalDetails(
                        proposal,
                        row.getString("full_name"),
                        local(row.getObject("proposed_at", OffsetDateTime.class), county),
                        proposal.proposedBy().equals(reader),
                        second(proposal)))
                .single();
    }

    private Optional<ProposalDetails.SecondReview> second(Proposal proposal) {
        EnvelopeKey key = proposal.key();
        return jdbc.sql("""
                        select u.full_name as "by", s.agrees, s.note from second_review s
                        join office_user u on u.user_name = s.reviewed_by
                        where s.election_id = ? and s.envelope_no = ? and s.proposal_no = ?
                        order by s.reviewed_at desc limit 1""")
                .params(key.electionId(), key.envelopeNo(), proposal.number())
                .query(ProposalDetails.SecondReview.class)
                .optional();
    }

    Optional<DecisionSummary> decided(EnvelopeKey key, ZoneId county) {
        return jdbc.sql("""
                        select outcome, reasons, legal_reference, decider, decided_at from decision
                        where election_id = ? and envelope_no = ? and set_aside_at is null
                        order by decision_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query((row, number) -> new DecisionSummary(
                        Code.find(DecisionOutcome.class, row.getString("outcome"))
                                .orElseThrow(),
                        CodeListColumn.reasons(row.getString("reasons")),
                        row.getString("legal_reference"),
                        row.getString("decider"),
                        local(row.getObject("decided_at", OffsetDateTime.class), county)))
                .optional();
    }

    /** The hash of the rules that a settled case was assessed under last; empty while it is not settled. */
    Optional<String> settledUnder(EnvelopeKey key) {
        return jdbc.sql("""
                        select a.pack_hash from envelope_case c join assessment a
                            on a.election_id = c.election_id and a.envelope_no = c.envelope_no and a.way = 'settled'
                        where c.election_id = ? and c.envelope_no = ?
                            and c.state in ('decided', 'released', 'sent_on', 'ended')
                        order by a.assessment_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query(String.class)
                .optional();
    }

    private static LocalDateTime local(OffsetDateTime at, ZoneId county) {
        return at.atZoneSameInstant(county).toLocalDateTime();
    }
}
