package org.proviso.election;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.BallotStyle;
import org.proviso.core.Contest;
import org.proviso.core.ElectionId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.StreetSegment;
import org.proviso.files.election.ElectionFolder;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of what is on the ballots and who gets which: contests, styles, precincts and streets. */
@Repository
class BallotStore {

    private static final int BATCH = 1_000;

    private final JdbcTemplate batches;
    private final JdbcClient jdbc;

    BallotStore(JdbcTemplate batches, JdbcClient jdbc) {
        this.batches = batches;
        this.jdbc = jdbc;
    }

    void insert(ElectionId id, ElectionFolder folder) {
        insertContests(id, folder.contests());
        insertStyles(id, folder.styles());
        insertPrecincts(id, folder.precincts());
        insertStreets(id, folder.streets());
    }

    private void insertContests(ElectionId id, List<Contest> contests) {
        List<Object[]> rows = new ArrayList<>();
        for (Contest contest : contests) {
            rows.add(new Object[] {
                id.value(),
                contest.contestId(),
                rows.size() + 1,
                contest.title(),
                contest.district(),
                contest.level().code()
            });
        }
        insert("contest (election_id, contest_id, place, title, district, level)", rows);
    }

    private void insertStyles(ElectionId id, List<BallotStyle> styles) {
        List<Object[]> rows = new ArrayList<>();
        List<Object[]> contests = new ArrayList<>();
        for (BallotStyle style : styles) {
            rows.add(new Object[] {id.value(), style.style(), rows.size() + 1, style.party()});
            int place = 0;
            for (String contest : style.contestIds()) {
                contests.add(new Object[] {id.value(), style.style(), contest, ++place});
            }
        }
        insert("ballot_style (election_id, style, place, party)", rows);
        insert("style_contest (election_id, style, contest_id, place)", contests);
    }

    private void insertPrecincts(ElectionId id, List<PrecinctPart> parts) {
        List<Object[]> rows = new ArrayList<>();
        for (PrecinctPart part : parts) {
            rows.add(new Object[] {
                id.value(),
                part.precinct(),
                part.split(),
                part.party(),
                rows.size() + 1,
                part.ballotStyle(),
                part.votingLocation()
            });
        }
        insert("precinct_part (election_id, precinct, split, party, place, style, voting_location)", rows);
    }

    private void insertStreets(ElectionId id, List<StreetSegment> segments) {
        List<Object[]> rows = new ArrayList<>();
        for (StreetSegment street : segments) {
            rows.add(new Object[] {
                id.value(),
                rows.size() + 1,
                street.low(),
                street.high(),
                street.parity().code(),
                street.street(),
                street.city(),
                street.zip(),
                street.precinct(),
                street.split()
            });
        }
        insert("street_segment (election_id, line_no, low, high, parity, street, city, zip, precinct, split)", rows);
    }

    private void insert(String columns, List<Object[]> rows) {
        int width = columns.split(",").length;
        String sql = "insert into " + columns + " values (?" + ", ?".repeat(width - 1) + ")";
        batches.batchUpdate(sql, rows, BATCH, (statement, row) -> {
            for (int i = 0; i < row.length; i++) {
                statement.setObject(i + 1, row[i]);
            }
        });
    }

    List<Contest> contests(String id) {
        return all(Contest.class, "select * from contest where election_id = ? order by place", id);
    }

    List<BallotStyle> styles(String id) {
        Map<String, Set<String>> contests = contestsOfStyles(id);
        return jdbc.sql("select * from ballot_style where election_id = ? order by place")
                .param(id)
                .query((row, number) -> new BallotStyle(
                        row.getString("style"),
                        row.getString("party"),
                        Collections.unmodifiableSet(contests.getOrDefault(row.getString("style"), Set.of()))))
                .list();
    }

    /** The contests of each style in the order of its ballot, which decides how a page lists them. */
    private Map<String, Set<String>> contestsOfStyles(String id) {
        Map<String, Set<String>> contests = new HashMap<>();
        jdbc.sql("select style, contest_id from style_contest where election_id = ? order by style, place")
                .param(id)
                .query(row -> {
                    contests.computeIfAbsent(row.getString("style"), any -> new LinkedHashSet<>())
                            .add(row.getString("contest_id"));
                });
        return contests;
    }

    List<PrecinctPart> precincts(String id) {
        return all(PrecinctPart.class, """
                select p.*, p.style as ballot_style from precinct_part p where p.election_id = ? order by p.place""", id);
    }

    List<StreetSegment> streets(String id) {
        return all(StreetSegment.class, "select * from street_segment where election_id = ? order by line_no", id);
    }

    private <T> List<T> all(Class<T> type, String sql, String id) {
        return jdbc.sql(sql).param(id).query(type).list();
    }
}
