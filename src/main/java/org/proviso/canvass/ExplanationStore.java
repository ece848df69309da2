package org.proviso.canvass;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of explanations of totals that cannot agree. */
@Repository
class ExplanationStore {

    /** A row; of the county as a whole the place has the county's name. */
    private record Row(
            ElectionId electionId,
            int explanationNo,
            String place,
            VotingHours hours,
            BalanceRule identity,
            @Nullable Integer difference,
            String because,
            UserName writtenBy,
            Instant writtenAt,
            @Nullable UserName signedBy,
            @Nullable Instant signedAt,
            int version) {

        BalanceExplanation explanation() {
            CanvassPlace where = place.equals(CanvassService.COUNTY)
                    ? CanvassPlace.county(hours)
                    : CanvassPlace.location(place, hours);
            return new BalanceExplanation(
                    electionId,
                    explanationNo,
                    where,
                    identity,
                    difference,
                    because,
                    writtenBy,
                    writtenAt,
                    signedBy,
                    signedAt,
                    version);
        }
    }

    /** A new row. */
    private record NewExplanation(
            ExplainBalance asked, String place, VotingHours hours, int number, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    ExplanationStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Every one that was not taken back, in their order. */
    List<BalanceExplanation> standing(ElectionId electionId) {
        return jdbc.sql("""
                        select * from balance_explanation where election_id = ? and taken_back_at is null
                        order by explanation_no""").param(electionId).query(Row.class).list().stream()
                .map(Row::explanation)
                .toList();
    }

    /** Totals with what is explained of them. */
    List<BalanceResult> applied(ElectionId electionId, List<BalanceResult> balances) {
        return new ExplainedBalances(standing(electionId)).of(balances);
    }

    /** The new one's number. */
    int insert(ExplainBalance asked, UserName by) {
        int number =
                jdbc.sql("""
                        select coalesce(max(explanation_no), 0) + 1 from balance_explanation where election_id = ?""").param(asked.electionId()).query(Integer.class).single();
        try {
            insert(new NewExplanation(asked, asked.where().name(), asked.where().hours(), number, by, clock.instant()));
        } catch (DuplicateKeyException e) {
            throw new OptimisticLockingFailureException("Somebody wrote another explanation at the same moment.", e);
        }
        return number;
    }

    private void insert(NewExplanation written) {
        jdbc.sql("""
                        insert into balance_explanation (election_id, explanation_no, place, hours, identity, difference,
                            because, written_by, written_at, version)
                        values (:asked.electionId, :number, :place, :hours, :asked.identity, :asked.difference,
                            :asked.because, :by, :at, 0)""").paramSource(written).update();
    }

    void sign(BalanceExplanation explanation, UserName by) {
        changed(jdbc.sql("""
                        update balance_explanation set signed_by = ?, signed_at = ?, version = version + 1
                        where election_id = ? and explanation_no = ? and version = ?""")
                .params(by, clock.instant(), explanation.electionId(), explanation.number(), explanation.version())
                .update());
    }

    /** It explains nothing any more, and stays in the table. */
    void takeBack(BalanceExplanation explanation, UserName by) {
        changed(jdbc.sql("""
                        update balance_explanation set taken_back_by = ?, taken_back_at = ?, version = version + 1
                        where election_id = ? and explanation_no = ? and version = ?""")
                .params(by, clock.instant(), explanation.electionId(), explanation.number(), explanation.version())
                .update());
    }

    private static void changed(int rows) {
        if (rows == 0) {
            throw new OptimisticLockingFailureException("Somebody changed it at the same moment.");
        }
    }
}
