package org.proviso.files.roll;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.Code;
import org.proviso.core.Entitlement;
import org.proviso.core.PersonName;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.files.InputException;
import org.proviso.files.csv.CellParser;

/**
 * Makes a voter of one record of NIST Voter Records Interchange (SP 1500-102 version 1, 2021). What the format has no
 * field for, first of all date and channel of registration, is unknown.
 */
final class VriVoterReader {

    private static final String VOTER_ID = "state-voter-registration-id";

    private final JsonValue record;
    private final JsonValue voter;

    VriVoterReader(JsonValue value) {
        record = value.object(
                "VRI.VoterRecord",
                "District",
                "ElectionAdministration",
                "HavaIdRequired",
                "Locality",
                "OtherStatus",
                "PollingLocation",
                "Voter",
                "VoterParticipation",
                "VoterStatus");
        voter = record.required("Voter")
                .object(
                        "VRI.Voter",
                        "ContactMethod",
                        "DateOfBirth",
                        "Ethnicity",
                        "Gender",
                        "MailingAddress",
                        "Name",
                        "Party",
                        "PreviousName",
                        "PreviousResidenceAddress",
                        "PreviousSignature",
                        "ResidenceAddress",
                        "ResidenceAddressIsMailingAddress",
                        "Signature",
                        "VoterClassification",
                        "VoterId");
    }

    Voter voter() {
        return new Voter(
                voterId(),
                name(),
                voter.optional("DateOfBirth").map(JsonValue::date).orElse(null),
                residence(),
                new Voter.Registration(null, null, null, status(), "", null, null, Entitlement.FULL),
                id("ssn4"),
                id("drivers-license"),
                voter.optional("Party").map(VriVoterReader::party).orElse(""),
                null,
                record.yesNo("HavaIdRequired"),
                YesNo.UNKNOWN,
                null,
                voter.optional("PreviousName").map(VriVoterReader::fullName).orElse(""),
                isProtected(),
                mailAddress(),
                "");
    }

    private VoterId voterId() {
        String id = id(VOTER_ID);
        if (id.isEmpty()) {
            throw InputException.atKey(
                    voter.file(), voter.line(), voter.key() + ".VoterId", "has no id of type " + VOTER_ID);
        }
        return new VoterId(id);
    }

    private String id(String type) {
        return voter.list("VoterId").stream()
                .map(id -> id.object(
                        "VRI.VoterId",
                        "AttestNoSuchId",
                        "DateOfIssuance",
                        "FileValue",
                        "OtherType",
                        "StringValue",
                        "Type"))
                .filter(id -> id.required("Type").text().equals(type))
                .map(id -> id.text("StringValue"))
                .findFirst()
                .orElse("");
    }

    private PersonName name() {
        JsonValue name = checkedName(voter.required("Name"));
        if (name.text("LastName").isEmpty() && name.text("FirstName").isEmpty()) {
            throw name.wrong("has neither LastName nor FirstName");
        }
        return new PersonName(name.text("LastName"), name.text("FirstName"), middle(name), name.text("Suffix"));
    }

    private static JsonValue checkedName(JsonValue name) {
        return name.object("VRI.Name", "FirstName", "FullName", "LastName", "MiddleName", "Prefix", "Suffix");
    }

    private static String middle(JsonValue name) {
        return name.list("MiddleName").stream().map(JsonValue::text).collect(Collectors.joining(" "));
    }

    private static String fullName(JsonValue value) {
        JsonValue name = checkedName(value);
        String parts = Stream.of(name.text("FirstName"), middle(name), name.text("LastName"), name.text("Suffix"))
                .filter(Predicate.not(String::isEmpty))
                .collect(Collectors.joining(" "));
        return parts.isEmpty() ? name.text("FullName") : parts;
    }

    private Voter.Residence residence() {
        VriAddress at = VriAddress.of(voter.required("ResidenceAddress"));
        return new Voter.Residence(
                at.houseNumber(),
                at.street(),
                at.unit(),
                at.city(),
                at.zip(),
                area("precinct"),
                area("split-precinct"));
    }

    /** The office's own number of the area, or its name where it has no number. */
    private String area(String type) {
        List<JsonValue> areas = record.list("Locality").stream()
                .filter(area -> area.required("Type").text().equals(type))
                .toList();
        return areas.stream()
                .flatMap(area -> area.list("ExternalIdentifier").stream())
                .map(id -> id.required("Value").text())
                .findFirst()
                .orElse(areas.stream()
                        .map(area -> area.text("Name"))
                        .findFirst()
                        .orElse(""));
    }

    private RollStatus status() {
        JsonValue status = record.required("VoterStatus");
        JsonValue stated = status.text().equals("other") ? record.required("OtherStatus") : status;
        return Code.find(RollStatus.class, stated.text())
                .orElseThrow(() -> stated.wrong(InputException.quoted(stated.text()) + " is not one of "
                        + CellParser.allowed(RollStatus.class)));
    }

    private static String party(JsonValue party) {
        String abbreviation = party.text("Abbreviation");
        return abbreviation.isEmpty() ? party.required("Name").text() : abbreviation;
    }

    private boolean isProtected() {
        return voter.list("VoterClassification").stream()
                .anyMatch(said -> said.required("Type").text().equals("protected-voter")
                        && said.required("Assertion").text().equals("yes"));
    }

    private String mailAddress() {
        return voter.optional("MailingAddress")
                .map(address -> VriAddress.of(address).oneLine())
                .orElse("");
    }
}
