package org.proviso.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.UserName;
import org.proviso.ledger.Actor;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of accounts and roles. */
@Repository
class UserStore {

    private static final String SELECT = """
            select user_name, full_name, party, pseudonym, password_is_one_time, enabled, demo, version
            from office_user
            """;

    /** A new account. */
    private record Created(OfficeUser user, String passwordHash, Instant createdAt) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    UserStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    Optional<OfficeUser> find(UserName userName) {
        return jdbc.sql(SELECT + "where user_name = ?")
                .param(userName)
                .query(this::user)
                .optional();
    }

    List<OfficeUser> all() {
        return jdbc.sql(SELECT + "order by user_name").query(this::user).list();
    }

    String passwordHash(UserName userName) {
        return jdbc.sql("select password_hash from office_user where user_name = ?")
                .param(userName)
                .query(String.class)
                .single();
    }

    void insert(OfficeUser user, String passwordHash) {
        jdbc.sql("""
                        insert into office_user (user_name, full_name, party, pseudonym, password_hash,
                            password_is_one_time, enabled, demo, created_at, version)
                        values (:user.userName, :user.fullName, :user.party, :user.actor.pseudonym, :passwordHash,
                            :user.passwordIsOneTime, :user.enabled, :user.demo, :createdAt, 0)""")
                .paramSource(new Created(user, passwordHash, clock.instant()))
                .update();
        insertRoles(user.userName(), user.roles());
    }

    void changeRoles(UserName userName, int version, Set<Role> roles) {
        touched(
                jdbc.sql("update office_user set version = version + 1 where user_name = ? and version = ?")
                        .params(userName, version)
                        .update(),
                userName);
        jdbc.sql("delete from user_role where user_name = ?").param(userName).update();
        insertRoles(userName, roles);
    }

    void changePerson(UserName userName, int version, String fullName, String party) {
        touched(jdbc.sql("""
                        update office_user set full_name = ?, party = ?, version = version + 1
                        where user_name = ? and version = ?""").params(fullName, party, userName, version).update(), userName);
    }

    void enable(UserName userName, int version, boolean enabled) {
        touched(jdbc.sql("""
                                update office_user set enabled = ?, version = version + 1
                                where user_name = ? and version = ?""").params(enabled, userName, version).update(), userName);
    }

    void changePassword(UserName userName, String hash, boolean oneTime) {
        jdbc.sql("""
                        update office_user set password_hash = ?, password_is_one_time = ?, version = version + 1
                        where user_name = ?""").params(hash, oneTime, userName).update();
    }

    private void insertRoles(UserName userName, Set<Role> roles) {
        for (Role role : roles) {
            jdbc.sql("insert into user_role (user_name, role) values (?, ?)")
                    .params(userName, role.code())
                    .update();
        }
    }

    private static void touched(int rows, UserName userName) {
        if (rows == 0) {
            throw stale(userName);
        }
    }

    static OptimisticLockingFailureException stale(UserName userName) {
        return new OptimisticLockingFailureException(
                "The account " + userName + " was changed by somebody else since you opened it.");
    }

    private OfficeUser user(ResultSet row, int number) throws SQLException {
        UserName userName = new UserName(row.getString("user_name"));
        return new OfficeUser(
                userName,
                row.getString("full_name"),
                row.getString("party"),
                new Actor(row.getString("pseudonym")),
                roles(userName),
                row.getBoolean("password_is_one_time"),
                row.getBoolean("enabled"),
                row.getBoolean("demo"),
                row.getInt("version"));
    }

    private Set<Role> roles(UserName userName) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        roles.addAll(jdbc.sql("select role from user_role where user_name = ?")
                .param(userName)
                .query(Role.class)
                .list());
        return roles;
    }
}
