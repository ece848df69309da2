package org.proviso.canvass.sheet;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.canvass.Figure;
import org.proviso.canvass.VotingHours;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of noted figures, as the sheet reads it and writes to it. */
@Repository
class SheetStore {

    /** A note with who made it and when; the number before is null where there was none or it was not kept. */
    record Note(
            int noteNo,
            String place,
            VotingHours hours,
            Figure figure,
            int number,
            @Nullable Integer numberBefore,
            String because,
            UserName notedBy,
            Instant notedAt) {}

    /** A new row. */
    private record NewNote(
            ElectionId electionId, int noteNo, TypedFigure typed, String because, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    SheetStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Every note in the order in which it was made. */
    List<Note> notes(ElectionId electionId) {
        return jdbc.sql("""
                        select note_no, place, hours, figure, number, number_before, because, noted_by, noted_at
                        from noted_figure where election_id = ? order by note_no""").param(electionId).query(Note.class).list();
    }

    /** Under the number after the last note that was read: whoever noted something since then has taken it. */
    void insert(ElectionId electionId, int noteNo, TypedFigure typed, String because, UserName by) {
        try {
            jdbc.sql("""
                            insert into noted_figure (election_id, note_no, place, hours, figure, number, number_before,
                                because, noted_by, noted_at)
                            values (:electionId, :noteNo, :typed.place, :typed.hours, :typed.figure, :typed.number,
                                :typed.seen, :because, :by, :at)""")
                    .paramSource(new NewNote(electionId, noteNo, typed, because, by, clock.instant()))
                    .update();
        } catch (DuplicateKeyException e) {
            throw new OptimisticLockingFailureException("Somebody noted a figure at the same moment.", e);
        }
    }
}
