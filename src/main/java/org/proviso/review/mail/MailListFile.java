package org.proviso.review.mail;

import java.util.List;
import java.util.stream.Stream;
import org.proviso.files.csv.CsvOutput;

/** A list for the mail-ballot desk as a CSV file that opens in a spreadsheet: no cell of it is a formula there. */
final class MailListFile {

    private static final List<String> HEADER = List.of(
            "list_no", "line_no", "what", "voter_id", "name", "envelope_no", "receipt_no", "mail_ballots", "answer");

    private MailListFile() {}

    /** The answer is the one that holds, or empty for the desk to fill in. */
    static String of(MailList list) {
        return CsvOutput.text(HEADER, out -> list.lines().forEach(line -> out.row(row(line))));
    }

    private static List<String> row(SentLine sent) {
        MailLine line = sent.line();
        GivenAnswer given = sent.given();
        return Stream.of(
                        String.valueOf(sent.listNo()),
                        String.valueOf(sent.lineNo()),
                        line.kind().words(),
                        line.voterId().value(),
                        line.voterName(),
                        line.key().envelopeNo().value(),
                        line.receiptNo(),
                        line.ballots(),
                        given == null ? "" : given.answer().words())
                .map(CsvOutput::text)
                .toList();
    }
}
