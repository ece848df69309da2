package org.proviso.core.matching;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.proviso.files.csv.CsvOutput;

/**
 * Writes an invented election for measuring the {@code match} verb: {@code MessyFiles FOLDER VOTERS ENVELOPES SEED} makes
 * roll.csv, envelopes.csv and truth.csv. Then run the verb on the first two with {@code -Xmx1g}.
 */
final class MessyFiles {

    private MessyFiles() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        MessyElection election = new MessyElection(
                Long.parseLong(arguments[3]), Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]));
        CsvOutput.write(
                folder.resolve("roll.csv"),
                columns(
                        "voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,zip,"
                                + "id_last4"),
                out -> election.roll.forEach(person -> writeVoter(out, person)));
        CsvOutput.write(
                folder.resolve("envelopes.csv"),
                columns("envelope_no,last_name,first_name,middle_name,suffix,date_of_birth,residence_address_line,unit,"
                        + "city,zip,former_address_line,id_last4"),
                out -> election.envelopes.forEach(envelope -> writeEnvelope(out, envelope)));
        CsvOutput.write(
                folder.resolve("truth.csv"),
                columns("envelope_no,voter_id"),
                out -> election.envelopes.forEach(envelope -> out.row(
                        envelope.envelopeNo().value(),
                        election.truth.get(envelope.envelopeNo().value()))));
    }

    private static void writeVoter(CsvOutput out, InventedPerson person) {
        out.row(
                person.id(),
                person.last(),
                person.first(),
                person.middle(),
                person.suffix(),
                person.born().toString(),
                String.valueOf(person.house()),
                person.street(),
                person.unit(),
                person.city(),
                person.zip(),
                person.last4());
    }

    private static void writeEnvelope(CsvOutput out, MatchQuery envelope) {
        out.row(
                envelope.envelopeNo().value(),
                envelope.name().last(),
                envelope.name().first(),
                envelope.name().middle(),
                envelope.name().suffix(),
                envelope.birthDate() == null ? "" : envelope.birthDate().toString(),
                envelope.residence().line(),
                envelope.residence().unit(),
                envelope.residence().city(),
                envelope.residence().zip(),
                envelope.former().line(),
                envelope.idLast4());
    }

    private static List<String> columns(String header) {
        return List.of(header.split(","));
    }
}
