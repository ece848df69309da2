package org.proviso.roll;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.Entitlement;
import org.proviso.core.Key;
import org.proviso.core.PersonName;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.core.matching.index.RollEntry;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.stereotype.Repository;

/** The table of the roll's records. */
@Repository
class VoterStore {

    private static final String COLUMNS = """
            election_id, snapshot_no, row_no, voter_id, last_name, first_name, middle_name, suffix, birth_date,
            house_number, street, unit, city, zip, precinct, split, registered_on, registration_channel, received_on,
            status, status_reason, status_on, confirmation_sent_on, entitlement, id_last4, drivers_license, party,
            party_since, id_required, number_matched, last_voted_on, former_name, confidential, mail_address, language""";

    /** The columns that say something of a voter, in which two records can differ. */
    static final List<String> CONTENT =
            Arrays.stream(COLUMNS.split(",")).map(String::strip).skip(4).toList();

    /** Takes the election twice: a join would let a database walk the whole roll for one voter. */
    private static final String IN_USE = """
            select v.* from voter v
            where v.snapshot_no = (select snapshot_no from current_snapshot where election_id = ? and kind = 'roll')
              and v.election_id = ?
            """;

    private static final String SEVERAL = """
            select v.* from unnest(cast(? as varchar array)) as wanted (id)
            join voter v on v.election_id = ? and v.voter_id = wanted.id
              and v.snapshot_no = (select snapshot_no from current_snapshot where election_id = ? and kind = 'roll')""";

    private static final String ENTRY = """
            v.voter_id, v.last_name, v.first_name, v.middle_name, v.suffix, v.former_name, v.birth_date, v.house_number,
            v.street, v.unit, v.zip, v.id_last4, v.drivers_license""";

    private static final String SOME = "select " + ENTRY + """
             from unnest(cast(? as varchar array)) as wanted (id)
            join voter v on v.election_id = ? and v.snapshot_no = ? and v.voter_id = wanted.id""";

    private static final int FETCHED = 2_000;

    private final JdbcTemplate jdbc;

    private final BulkLoadStore copies;

    VoterStore(JdbcTemplate jdbc, BulkLoadStore copies) {
        this.jdbc = jdbc;
        this.copies = copies;
    }

    /** Writes what the source hands over, all of it or nothing, and gives the number of rows. */
    int load(ElectionId electionId, int snapshot, Consumer<Consumer<Voter>> source) {
        return load(electionId, snapshot, source, rows -> {});
    }

    /** The same; {@code progress} hears after each row how many there were. */
    int load(ElectionId electionId, int snapshot, Consumer<Consumer<Voter>> source, LongConsumer progress) {
        try (RowBatchWriter rows = new RowBatchWriter(copies, "voter", COLUMNS)) {
            source.accept(voter -> {
                rows.add(row(electionId, snapshot, rows.rows() + 1, voter));
                progress.accept(rows.rows());
            });
            rows.finish();
            copies.count("voter");
            return rows.rows();
        }
    }

    private static Object[] row(ElectionId electionId, int snapshot, int number, Voter voter) {
        List<Object> row = new ArrayList<>();
        Collections.addAll(row, electionId, snapshot, number, voter.voterId());
        addPerson(row, voter);
        addRegistration(row, voter.registration());
        addRest(row, voter);
        return row.toArray();
    }

    private static void addPerson(List<Object> row, Voter voter) {
        PersonName name = voter.name();
        Voter.Residence home = voter.residence();
        Collections.addAll(row, name.last(), name.first(), name.middle(), name.suffix());
        row.add(voter.birthDate());
        Collections.addAll(row, home.houseNumber(), home.street(), home.unit(), home.city(), home.zip());
        Collections.addAll(row, home.precinct(), home.split());
    }

    private static void addRegistration(List<Object> row, Voter.Registration registration) {
        RegistrationChannel channel = registration.channel();
        row.add(registration.registeredOn());
        row.add(channel == null ? null : channel.code());
        row.add(registration.receivedOn());
        Collections.addAll(row, registration.status().code(), registration.statusReason());
        row.add(registration.statusOn());
        row.add(registration.confirmationSentOn());
        row.add(registration.entitlement().code());
    }

    private static void addRest(List<Object> row, Voter voter) {
        Collections.addAll(row, voter.idLast4(), voter.driversLicense(), voter.party());
        row.add(voter.partySince());
        Collections.addAll(row, word(voter.idRequired()), word(voter.numberMatched()));
        row.add(voter.lastVotedOn());
        Collections.addAll(row, voter.formerName(), voter.confidential(), voter.mailAddress(), voter.language());
    }

    Optional<Voter> find(ElectionId electionId, VoterId voterId) {
        return jdbc
                .query(
                        IN_USE + "and v.voter_id = ?",
                        this::voter,
                        electionId.value(),
                        electionId.value(),
                        voterId.value())
                .stream()
                .findFirst();
    }

    /** The records of several voters, by voter id; one that the roll does not have is not in it. */
    Map<VoterId, Voter> find(ElectionId electionId, Collection<VoterId> voterIds) {
        Map<VoterId, Voter> found = new HashMap<>();
        jdbc.query(
                SEVERAL,
                row -> {
                    found.put(new VoterId(row.getString("voter_id")), voter(row, 0));
                },
                voterIds.stream().map(Key::value).toArray(String[]::new),
                electionId.value(),
                electionId.value());
        return found;
    }

    /** The record of a voter in a snapshot that need not be in use. */
    Optional<Voter> find(ElectionId electionId, int snapshot, VoterId voterId) {
        return jdbc
                .query(
                        "select * from voter where election_id = ? and snapshot_no = ? and voter_id = ?",
                        this::voter,
                        electionId.value(),
                        snapshot,
                        voterId.value())
                .stream()
                .findFirst();
    }

    List<Voter> all(ElectionId electionId) {
        return jdbc.query(IN_USE + "order by v.row_no", this::voter, electionId.value(), electionId.value());
    }

    /** What the index needs of each record in use, in no order; only a few records are held at a time. */
    void entries(ElectionId electionId, Consumer<RollEntry> each) {
        String sql = IN_USE.replace("v.*", ENTRY);
        jdbc.query(
                connection -> {
                    PreparedStatement statement = connection.prepareStatement(sql);
                    statement.setFetchSize(FETCHED);
                    statement.setString(1, electionId.value());
                    statement.setString(2, electionId.value());
                    return statement;
                },
                (RowCallbackHandler) row -> each.accept(entry(row)));
    }

    /** The same of some voters in a snapshot that need not be in use, by voter id; who is not in it is left out. */
    Map<VoterId, RollEntry> entries(ElectionId electionId, int snapshot, Collection<VoterId> voterIds) {
        Map<VoterId, RollEntry> entries = new HashMap<>();
        jdbc.query(
                connection -> {
                    PreparedStatement statement = connection.prepareStatement(SOME);
                    statement.setArray(
                            1,
                            connection.createArrayOf(
                                    "varchar", voterIds.stream().map(Key::value).toArray()));
                    statement.setString(2, electionId.value());
                    statement.setInt(3, snapshot);
                    return statement;
                },
                (RowCallbackHandler) row -> entries.put(new VoterId(row.getString(1)), entry(row)));
        return entries;
    }

    private static RollEntry entry(ResultSet row) throws SQLException {
        return new RollEntry(
                new VoterId(row.getString(1)),
                new PersonName(row.getString(2), row.getString(3), row.getString(4), row.getString(5)),
                row.getString(6),
                row.getObject(7, LocalDate.class),
                row.getString(8),
                row.getString(9),
                row.getString(10),
                row.getString(11),
                row.getString(12),
                row.getString(13));
    }

    private Voter voter(ResultSet row, int number) throws SQLException {
        return new Voter(
                new VoterId(row.getString("voter_id")),
                new PersonName(
                        row.getString("last_name"),
                        row.getString("first_name"),
                        row.getString("middle_name"),
                        row.getString("suffix")),
                row.getObject("birth_date", LocalDate.class),
                new Voter.Residence(
                        row.getString("house_number"),
                        row.getString("street"),
                        row.getString("unit"),
                        row.getString("city"),
                        row.getString("zip"),
                        row.getString("precinct"),
                        row.getString("split")),
                registration(row),
                row.getString("id_last4"),
                row.getString("drivers_license"),
                row.getString("party"),
                row.getObject("party_since", LocalDate.class),
                YesNo.valueOf(row.getString("id_required").toUpperCase(Locale.ROOT)),
                YesNo.valueOf(row.getString("number_matched").toUpperCase(Locale.ROOT)),
                row.getObject("last_voted_on", LocalDate.class),
                row.getString("former_name"),
                row.getBoolean("confidential"),
                row.getString("mail_address"),
                row.getString("language"));
    }

    private static Voter.Registration registration(ResultSet row) throws SQLException {
        String channel = row.getString("registration_channel");
        return new Voter.Registration(
                row.getObject("registered_on", LocalDate.class),
                channel == null
                        ? null
                        : Code.find(RegistrationChannel.class, channel).orElseThrow(),
                row.getObject("received_on", LocalDate.class),
                Code.find(RollStatus.class, row.getString("status")).orElseThrow(),
                row.getString("status_reason"),
                row.getObject("status_on", LocalDate.class),
                row.getObject("confirmation_sent_on", LocalDate.class),
                Code.find(Entitlement.class, row.getString("entitlement")).orElseThrow());
    }

    private static String word(YesNo answer) {
        return answer.name().toLowerCase(Locale.ROOT);
    }
}
