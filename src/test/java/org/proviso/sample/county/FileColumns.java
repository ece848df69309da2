package org.proviso.sample.county;

import java.util.List;

/** The columns of each file of an election folder, in the order in which the sample writes them. */
public final class FileColumns {

    public static final List<String> CONTESTS = of("contest_id,title,district,level");
    public static final List<String> STYLES = of("ballot_style,contest_id,party");
    public static final List<String> PRECINCTS = of("precinct,split,ballot_style,party,voting_location");
    public static final List<String> STREETS = of("low,high,parity,street,city,zip,precinct,split");
    public static final List<String> ROLL =
            of("voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,"
                    + "street,unit,city,zip,precinct,split,registration_date,registration_channel,received_on,status,"
                    + "status_reason,status_on,confirmation_sent_on,last_voted_on,id_last4,drivers_license,party,party_since,"
                    + "id_required,number_matched,entitlement,former_name,confidential,mail_address,language");
    public static final List<String> MAIL = of("voter_id,ballot_serial,issued_on,state,state_on");
    public static final List<String> CHECK_INS = of("voter_id,voting_location,at,kind,ballot_issued,cancelled_at");
    public static final List<String> ELSEWHERE =
            of("last_name,first_name,middle_name,suffix,date_of_birth,id_last4,drivers_license,county,how,on");
    public static final List<String> TRANSMITTALS =
            of("voting_location,day,bag,seal_out,seal_in,supplied,issued,spoiled,"
                    + "unused,returned,scanned_in_error,loose_ballots");
    public static final List<String> ENVELOPES = of("envelope_no,receipt_no,source,voting_location,precinct_cast,"
            + "ballot_style_cast,party_ballot_cast,cast_at,extended_hours,in_line_at_close,issue_reasons,last_name,"
            + "first_name,middle_name,suffix,former_name,date_of_birth,residence_address_line,unit,city,zip,"
            + "former_address_line,moved_on,mail_address_line,id_last4,drivers_license,phone,email,language,party,"
            + "id_shown,id_kind,declaration,mail_ballot_surrendered,sent_here_by_official,official_note,"
            + "statements_ticked,voter_signed,mark_witness,official_signed,envelope_condition,signature_image,"
            + "field_states");
    public static final List<String> TRUTH = of("envelope_no,voter_id,outcome,contests,signature,scenario,note");

    private FileColumns() {}

    private static List<String> of(String names) {
        return List.of(names.split(","));
    }
}
