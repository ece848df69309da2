package org.proviso.review.queue;

import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of the lists that people named. */
@Repository
class SavedViewStore {

    private final JdbcClient jdbc;

    SavedViewStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<SavedView> of(ElectionId electionId, UserName userName) {
        return jdbc.sql("""
                        select view_no, view_name, shown from saved_view
                        where election_id = ? and user_name = ? order by lower(view_name), view_no""").params(electionId, userName).query(SavedView.class).list();
    }

    /** The views of a person, held until the transaction ends, so that two windows do not take the same name. */
    void lock(UserName userName) {
        jdbc.sql("select user_name from office_user where user_name = ? for update")
                .param(userName)
                .query(String.class)
                .list();
    }

    void insert(ElectionId electionId, UserName userName, String name, String shown) {
        jdbc.sql("""
                        insert into saved_view (election_id, user_name, view_no, view_name, shown)
                        values (:election, :user, (select coalesce(max(v.view_no), 0) + 1 from saved_view v
                            where v.election_id = :election and v.user_name = :user), :name, :shown)""")
                .param("election", electionId)
                .param("user", userName)
                .param("name", name)
                .param("shown", shown)
                .update();
    }

    void rename(ElectionId electionId, UserName userName, int viewNo, String name) {
        jdbc.sql("update saved_view set view_name = ? where election_id = ? and user_name = ? and view_no = ?")
                .params(name, electionId, userName, viewNo)
                .update();
    }

    void remove(ElectionId electionId, UserName userName, int viewNo) {
        jdbc.sql("delete from saved_view where election_id = ? and user_name = ? and view_no = ?")
                .params(electionId, userName, viewNo)
                .update();
    }
}
