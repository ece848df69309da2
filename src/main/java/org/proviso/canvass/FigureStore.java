package org.proviso.canvass;

import java.time.Clock;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of figures that people noted, of figures kept from day to day, and of envelopes with something to cure. */
@Repository
class FigureStore {

    /** A figure as somebody noted it. */
    record NotedFigure(String place, VotingHours hours, Figure figure, int number) {}

    /** A note under its number. */
    private record Note(NoteFigure note, int number, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    FigureStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    void note(NoteFigure note, UserName by) {
        int number = jdbc.sql("select coalesce(max(note_no), 0) + 1 from noted_figure where election_id = ?")
                .param(note.electionId())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into noted_figure (election_id, note_no, place, hours, figure, number, because, noted_by,
                            noted_at)
                        values (:note.electionId, :number, :note.place, :note.hours, :note.figure, :note.number,
                            :note.because, :by, :at)""").paramSource(new Note(note, number, by, clock.instant())).update();
    }

    /** A figure as somebody noted it, with its source. */
    record SourcedFigure(Figure figure, int number, String because, UserName notedBy) {}

    /** Every note of a place in the order in which it was made. */
    List<SourcedFigure> notes(ElectionId electionId, CanvassPlace where) {
        return jdbc.sql("""
                        select figure, number, because, noted_by from noted_figure
                        where election_id = ? and place = ? and hours = ? order by note_no""")
                .params(electionId, where.name(), where.hours())
                .query(SourcedFigure.class)
                .list();
    }

    /** Every note in the order in which it was made: a later one of the same figure takes the place of an earlier one. */
    List<NotedFigure> noted(ElectionId electionId) {
        return jdbc.sql("select * from noted_figure where election_id = ? order by note_no")
                .param(electionId)
                .query(NotedFigure.class)
                .list();
    }

    Optional<PlaceFigures> kept(ElectionId electionId) {
        return jdbc.sql("select * from kept_figures where election_id = ? order by kept_no desc limit 1")
                .param(electionId)
                .query((row, line) -> {
                    Map<Figure, Integer> figures = new EnumMap<>(Figure.class);
                    figures.put(Figure.RECEIVED, row.getInt("received"));
                    figures.put(Figure.COUNTED, row.getInt("counted"));
                    figures.put(Figure.COUNTED_IN_PART, row.getInt("counted_in_part"));
                    figures.put(Figure.REJECTED, row.getInt("rejected"));
                    return new PlaceFigures(figures);
                })
                .optional();
    }

    void keep(ElectionId electionId, PlaceFigures counts) {
        int number = jdbc.sql("select coalesce(max(kept_no), 0) + 1 from kept_figures where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into kept_figures (election_id, kept_no, received, counted, counted_in_part, rejected,
                            kept_at)
                        values (?, ?, ?, ?, ?, ?, ?)""")
                .params(
                        electionId,
                        number,
                        counts.number(Figure.RECEIVED),
                        counts.number(Figure.COUNTED),
                        counts.number(Figure.COUNTED_IN_PART),
                        counts.number(Figure.REJECTED),
                        clock.instant())
                .update();
    }

    void addCureDefect(ElectionId electionId, EnvelopeNumber envelopeNo) {
        boolean known = jdbc.sql("select count(*) from cure_defect where election_id = ? and envelope_no = ?")
                        .params(electionId, envelopeNo)
                        .query(Integer.class)
                        .single()
                > 0;
        if (!known) {
            jdbc.sql("insert into cure_defect (election_id, envelope_no) values (?, ?)")
                    .params(electionId, envelopeNo)
                    .update();
        }
    }

    List<EnvelopeNumber> cureDefects(ElectionId electionId) {
        return jdbc.sql("select envelope_no from cure_defect where election_id = ?")
                .param(electionId)
                .query(EnvelopeNumber.class)
                .list();
    }

    int cureDefectCount(ElectionId electionId) {
        return jdbc.sql("select count(*) from cure_defect where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
    }
}
