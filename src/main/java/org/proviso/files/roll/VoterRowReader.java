package org.proviso.files.roll;

import org.proviso.core.Entitlement;
import org.proviso.core.PersonName;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;

/** Makes voters of the rows of one roll; the places of its columns are looked up once, as the rows are a million. */
final class VoterRowReader {

    private final CsvRow row;
    private final int id;
    private final int last;
    private final int first;
    private final int middle;
    private final int suffix;
    private final int born;
    private final int house;
    private final int street;
    private final int unit;
    private final int city;
    private final int zip;
    private final int precinct;
    private final int split;
    private final int registered;
    private final int channel;
    private final int received;
    private final int status;
    private final int statusReason;
    private final int statusOn;
    private final int confirmationSent;
    private final int lastVoted;
    private final int last4;
    private final int license;
    private final int party;
    private final int partySince;
    private final int idRequired;
    private final int numberMatched;
    private final int entitlement;
    private final int formerName;
    private final int confidential;
    private final int mailAddress;
    private final int language;

    VoterRowReader(CsvTable table) {
        row = table.row();
        id = table.column("voter_id");
        last = table.column("last_name");
        first = table.column("first_name");
        middle = table.column("middle_name");
        suffix = table.column("suffix");
        born = table.column("date_of_birth");
        house = table.column("house_number");
        street = table.column("street");
        unit = table.column("unit");
        city = table.column("city");
        zip = table.column("zip");
        precinct = table.column("precinct");
        split = table.column("split");
        registered = table.column("registration_date");
        channel = table.column("registration_channel");
        received = table.column("received_on");
        status = table.column("status");
        statusReason = table.column("status_reason");
        statusOn = table.column("status_on");
        confirmationSent = table.column("confirmation_sent_on");
        lastVoted = table.column("last_voted_on");
        last4 = table.column("id_last4");
        license = table.column("drivers_license");
        party = table.column("party");
        partySince = table.column("party_since");
        idRequired = table.column("id_required");
        numberMatched = table.column("number_matched");
        entitlement = table.column("entitlement");
        formerName = table.column("former_name");
        confidential = table.column("confidential");
        mailAddress = table.column("mail_address");
        language = table.column("language");
    }

    /** The voter of the row the table stands at. */
    Voter voter() {
        return new Voter(
                new VoterId(row.requiredKey(id)),
                new PersonName(row.text(last), row.text(first), row.text(middle), row.text(suffix)),
                row.date(born),
                residence(),
                registration(),
                row.key(last4),
                row.key(license),
                row.key(party),
                row.date(partySince),
                row.yesNo(idRequired),
                row.yesNo(numberMatched),
                row.date(lastVoted),
                row.text(formerName),
                row.yesNo(confidential).isYes(),
                row.text(mailAddress),
                row.key(language));
    }

    private Voter.Residence residence() {
        return new Voter.Residence(
                row.text(house),
                row.text(street),
                row.text(unit),
                row.text(city),
                row.text(zip),
                row.key(precinct),
                row.key(split));
    }

    private Voter.Registration registration() {
        Entitlement entitled = row.code(entitlement, Entitlement.class);
        return new Voter.Registration(
                row.date(registered),
                row.code(channel, RegistrationChannel.class),
                row.date(received),
                row.requiredCode(status, RollStatus.class),
                row.text(statusReason),
                row.date(statusOn),
                row.date(confirmationSent),
                entitled == null ? Entitlement.FULL : entitled);
    }
}
