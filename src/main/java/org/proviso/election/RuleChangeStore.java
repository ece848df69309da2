package org.proviso.election;

import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of rule packs put in force; a row is added for each, never changed. */
@Repository
public class RuleChangeStore {

    /** A change with the text of its pack, and the name by which the election knows it. */
    private record Row(ElectionId electionId, RuleChange change, String name, String content) {}

    private final JdbcClient jdbc;

    RuleChangeStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public int next(ElectionId electionId) {
        return jdbc.sql("select coalesce(max(change_no), 0) + 1 from rule_change where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
    }

    /** Adds a change, and makes its pack the election's. */
    public void insert(ElectionId electionId, RuleChange change, String content) {
        String name = name(change.changeNo());
        jdbc.sql("""
                        insert into rule_change (election_id, change_no, pack_name, pack_id, content, pack_hash,
                            hash_before, accepted_because, counterexample, counsel, ground, put_by, put_at)
                        values (:electionId, :change.changeNo, :name, :change.packId, :content, :change.packHash,
                            :change.hashBefore, :change.acceptedBecause, :change.counterexample, :change.counsel,
                            :change.ground, :change.putBy, :change.putAt)""").paramSource(new Row(electionId, change, name, content)).update();
        jdbc.sql("update election set rule_pack = ?, version = version + 1 where election_id = ?")
                .params(name, electionId)
                .update();
    }

    /** By which an election names a pack that was uploaded for it. */
    private static String name(int changeNo) {
        return "change-" + changeNo;
    }

    /** The text of an uploaded pack, or empty where the election's pack is one that came with the program. */
    Optional<String> content(ElectionId electionId, String packName) {
        return jdbc.sql("select content from rule_change where election_id = ? and pack_name = ?")
                .params(electionId, packName)
                .query(String.class)
                .optional();
    }

    /** Why an uploaded pack was taken: proved, or overridden. */
    Optional<String> acceptedBecause(ElectionId electionId, String packName) {
        return jdbc.sql("select accepted_because from rule_change where election_id = ? and pack_name = ?")
                .params(electionId, packName)
                .query(String.class)
                .optional();
    }

    public List<RuleChange> all(ElectionId electionId) {
        return jdbc.sql("select * from rule_change where election_id = ? order by change_no")
                .param(electionId)
                .query(RuleChange.class)
                .list();
    }
}
