package org.proviso.review.decide;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.review.CodeListColumn;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Which settled cases are contradicted now. That is found by comparing assessments, so no row can be left out: the one
 * that a decision rests on, the newest one, and those that were followed up.
 */
@Repository
class ContradictionStore {

    /** A decision is contradicted where the rules neither say what was decided nor what they said when it was. */
    private static final String OPEN = """
            with newest as (
                select n.envelope_no, n.assessment_no, n.recommendation, n.reasons,
                    rank() over (partition by n.envelope_no order by n.assessment_no desc) as place
                from assessment n where n.election_id = ? and n.way = 'settled'%s)
            select c.election_id, c.envelope_no, c.state, c.version, d.decision_no as decision,
                d.outcome as decided_as, d.decider, n.recommendation as says, n.reasons, n.assessment_no as assessment,
                coalesce((select l.because from late_change l
                    where l.election_id = c.election_id and l.envelope_no = c.envelope_no
                    order by l.change_no desc limit 1), '') as because
            from envelope_case c
            join newest n on n.envelope_no = c.envelope_no and n.place = 1
            left join decision d on d.election_id = c.election_id and d.envelope_no = c.envelope_no
                and d.set_aside_at is null
            left join assessment o on o.election_id = c.election_id and o.envelope_no = c.envelope_no
                and o.assessment_no = d.assessment_no and o.way = 'settled'
            where c.election_id = ? and c.state in ('decided', 'released', 'sent_on')
                and n.recommendation <> coalesce(d.outcome, 'sent_on')
                and (d.outcome is null or n.recommendation <> o.recommendation or n.reasons <> o.reasons)
                and not exists (select 1 from follow_up f
                    where f.election_id = c.election_id and f.envelope_no = c.envelope_no
                        and coalesce(f.decision_no, 0) = coalesce(d.decision_no, 0)
                        and f.says = n.recommendation and f.reasons = n.reasons)
            order by c.envelope_no""";

    /** A follow-up under its number, with the reasons as their column has them. */
    private record Row(int number, ContradictedDecision found, FollowUp done, String reasons) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    ContradictionStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** By envelope number. */
    List<ContradictedDecision> open(ElectionId electionId) {
        return jdbc.sql(OPEN.formatted(""))
                .params(electionId, electionId)
                .query(ContradictedDecision.class)
                .list();
    }

    List<ContradictedDecision> open(EnvelopeKey key) {
        return jdbc.sql(OPEN.formatted(" and n.envelope_no = ?"))
                .params(key.electionId(), key.envelopeNo(), key.electionId())
                .query(ContradictedDecision.class)
                .list();
    }

    /** What a newer record changed about a settled case, in words. */
    void note(EnvelopeKey key, String because) {
        jdbc.sql("""
                        insert into late_change (election_id, envelope_no, change_no, because, found_at)
                        select ?, ?, coalesce(max(change_no), 0) + 1, ?, ? from late_change
                        where election_id = ? and envelope_no = ?""")
                .params(
                        key.electionId(),
                        key.envelopeNo(),
                        because,
                        clock.instant(),
                        key.electionId(),
                        key.envelopeNo())
                .update();
    }

    void followUp(
            ContradictedDecision found,
            String note,
            @Nullable Integer sessionNo,
            @Nullable Integer motionNo,
            UserName by) {
        FollowUp done = new FollowUp(
                found.key(), found.says(), found.reasons(), note, sessionNo, motionNo, by, clock.instant());
        int number = jdbc.sql("""
                        select coalesce(max(follow_up_no), 0) + 1 from follow_up
                        where election_id = ? and envelope_no = ?""")
                .params(found.key().electionId(), found.key().envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into follow_up (election_id, envelope_no, follow_up_no, decision_no, assessment_no, says,
                            reasons, note, session_no, motion_no, recorded_by, recorded_at)
                        values (:done.key.electionId, :done.key.envelopeNo, :number, :found.decision, :found.assessment,
                            :done.says, :reasons, :done.note, :done.sessionNo, :done.motionNo, :done.recordedBy,
                            :done.recordedAt)""")
                .paramSource(new Row(number, found, done, CodeListColumn.of(found.reasons())))
                .update();
    }

    /** Every follow-up of an election, by envelope number and in their order. */
    List<FollowUp> followUps(ElectionId electionId) {
        return jdbc.sql("select f.* from follow_up f where f.election_id = ? order by f.envelope_no, f.follow_up_no")
                .param(electionId)
                .query(FollowUp.class)
                .list();
    }
}
