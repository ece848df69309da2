package org.proviso.files;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Writes envelopes.csv from the few cells a test cares about; every other cell is empty. */
public final class EnvelopeRows {

    private static final List<String> HEADER = List.of(
            ("envelope_no,receipt_no,source,voting_location,precinct_cast,ballot_style_cast,party_ballot_cast,cast_at,"
                            + "extended_hours,in_line_at_close,issue_reasons,last_name,first_name,middle_name,suffix,"
                            + "former_name,date_of_birth,residence_address_line,unit,city,zip,former_address_line,"
                            + "moved_on,mail_address_line,id_last4,drivers_license,phone,email,language,party,id_shown,"
                            + "id_kind,declaration,mail_ballot_surrendered,sent_here_by_official,official_note,"
                            + "statements_ticked,voter_signed,mark_witness,official_signed,envelope_condition,"
                            + "signature_image,field_states")
                    .split(","));

    private EnvelopeRows() {}

    @SafeVarargs
    public static String text(Map<String, String>... envelopes) {
        StringBuilder text = new StringBuilder(String.join(",", HEADER)).append('\n');
        Arrays.stream(envelopes).forEach(envelope -> text.append(row(envelope)).append('\n'));
        return text.toString();
    }

    private static String row(Map<String, String> envelope) {
        return String.join(
                ",",
                HEADER.stream().map(name -> envelope.getOrDefault(name, "")).toList());
    }
}
