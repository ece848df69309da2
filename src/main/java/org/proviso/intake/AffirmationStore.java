package org.proviso.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.proviso.core.Address;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.PersonName;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** The tables of what voters wrote: the affirmation, and the state of each box that was not simply keyed. */
@Repository
public class AffirmationStore {

    private static final int BATCH = 1_000;

    private static final String AFFIRMATION = """
            affirmation (election_id, envelope_no, last_name, first_name, middle_name, suffix, former_name,
                birth_date, birth_date_as_written, residence_line, residence_unit, residence_city, residence_zip, former_line, former_unit,
                former_city, former_zip, moved_on, mail_address, id_last4, drivers_license, phone, email, language,
                party, statements_ticked, version)""";

    private static final String FIELD = "affirmation_field (election_id, envelope_no, field, state)";

    private final JdbcTemplate jdbc;

    AffirmationStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    void insert(ElectionId electionId, List<Envelope> envelopes) {
        List<Object[]> rows = new ArrayList<>();
        List<Object[]> fields = new ArrayList<>();
        for (Envelope envelope : envelopes) {
            rows.add(row(electionId, envelope.envelopeNo(), envelope.affirmation(), 0));
            fields.addAll(fields(electionId, envelope.envelopeNo(), envelope.affirmation()));
        }
        insertRows(AFFIRMATION, rows);
        insertRows(FIELD, fields);
    }

    /** Writes what the voter wrote over what stood there; the caller has locked the envelope. */
    public void change(ElectionId electionId, EnvelopeNumber envelopeNo, Envelope.Affirmation said) {
        int version = Objects.requireNonNull(
                jdbc.queryForObject(
                        "select version from affirmation where election_id = ? and envelope_no = ?",
                        Integer.class,
                        electionId.value(),
                        envelopeNo.value()),
                "an affirmation has a version");
        for (String table : List.of("affirmation_field", "affirmation")) {
            jdbc.update(
                    "delete from " + table + " where election_id = ? and envelope_no = ?",
                    electionId.value(),
                    envelopeNo.value());
        }
        insertRows(AFFIRMATION, List.<Object[]>of(row(electionId, envelopeNo, said, version + 1)));
        insertRows(FIELD, fields(electionId, envelopeNo, said));
    }

    private static List<Object[]> fields(ElectionId electionId, EnvelopeNumber envelopeNo, Envelope.Affirmation said) {
        List<Object[]> fields = new ArrayList<>();
        said.fieldStates()
                .forEach((field, state) ->
                        fields.add(new Object[] {electionId.value(), envelopeNo.value(), field.code(), state.code()}));
        return fields;
    }

    private static Object[] row(
            ElectionId electionId, EnvelopeNumber envelopeNo, Envelope.Affirmation said, int version) {
        return new Object[] {
            electionId.value(),
            envelopeNo.value(),
            said.name().last(),
            said.name().first(),
            said.name().middle(),
            said.name().suffix(),
            said.formerName(),
            said.birthDate(),
            said.birthDateAsWritten(),
            said.residence().line(),
            said.residence().unit(),
            said.residence().city(),
            said.residence().zip(),
            said.former().line(),
            said.former().unit(),
            said.former().city(),
            said.former().zip(),
            said.movedOn(),
            said.mailAddress(),
            said.idLast4(),
            said.driversLicense(),
            said.phone(),
            said.email(),
            said.language(),
            said.party(),
            CodeColumn.joined(said.statementsTicked()),
            version
        };
    }

    private void insertRows(String columns, List<Object[]> rows) {
        int width = columns.split(",").length;
        String sql = "insert into " + columns + " values (?" + ", ?".repeat(width - 1) + ")";
        jdbc.batchUpdate(sql, rows, BATCH, (statement, row) -> {
            for (int i = 0; i < row.length; i++) {
                statement.setObject(i + 1, row[i]);
            }
        });
    }

    /** Every affirmation of the election by envelope number. */
    Map<EnvelopeNumber, Envelope.Affirmation> all(ElectionId electionId) {
        return read("%s t where t.election_id = ?", electionId.value());
    }

    /** The affirmations of these envelopes by envelope number; there is at least one number. */
    Map<EnvelopeNumber, Envelope.Affirmation> of(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return read(
                "unnest(cast(? as varchar array)) as wanted (id)"
                        + " join %s t on t.election_id = ? and t.envelope_no = wanted.id",
                envelopeNos.stream().map(Key::value).toArray(String[]::new), electionId.value());
    }

    private Map<EnvelopeNumber, Envelope.Affirmation> read(String from, Object... parameters) {
        Map<String, Map<Envelope.Field, Envelope.FieldState>> states = new HashMap<>();
        jdbc.query(
                "select t.* from " + from.formatted("affirmation_field"),
                row -> {
                    states.computeIfAbsent(row.getString("envelope_no"), any -> new EnumMap<>(Envelope.Field.class))
                            .put(
                                    Code.find(Envelope.Field.class, row.getString("field"))
                                            .orElseThrow(),
                                    Code.find(Envelope.FieldState.class, row.getString("state"))
                                            .orElseThrow());
                },
                parameters);
        Map<EnvelopeNumber, Envelope.Affirmation> affirmations = new HashMap<>();
        jdbc.query(
                "select t.* from " + from.formatted("affirmation"),
                row -> {
                    String number = row.getString("envelope_no");
                    affirmations.put(
                            new EnvelopeNumber(number), affirmation(row, states.getOrDefault(number, Map.of())));
                },
                parameters);
        return affirmations;
    }

    private static Envelope.Affirmation affirmation(ResultSet row, Map<Envelope.Field, Envelope.FieldState> states)
            throws SQLException {
        return new Envelope.Affirmation(
                new PersonName(
                        row.getString("last_name"),
                        row.getString("first_name"),
                        row.getString("middle_name"),
                        row.getString("suffix")),
                row.getString("former_name"),
                row.getObject("birth_date", LocalDate.class),
                row.getString("birth_date_as_written"),
                address(row, "residence"),
                address(row, "former"),
                row.getObject("moved_on", LocalDate.class),
                row.getString("mail_address"),
                row.getString("id_last4"),
                row.getString("drivers_license"),
                row.getString("phone"),
                row.getString("email"),
                row.getString("language"),
                row.getString("party"),
                CodeColumn.split(row.getString("statements_ticked")),
                states);
    }

    private static Address address(ResultSet row, String which) throws SQLException {
        return new Address(
                row.getString(which + "_line"),
                row.getString(which + "_unit"),
                row.getString(which + "_city"),
                row.getString(which + "_zip"));
    }
}
