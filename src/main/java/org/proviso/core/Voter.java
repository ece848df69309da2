package org.proviso.core;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One record of the roll as loaded on a day. Text that is not given is empty, dates and codes that are not given are
 * null. The birth date is as on file; a placeholder such as 1900-01-01 is judged where it is compared.
 */
public record Voter(
        VoterId voterId,
        PersonName name,
        @Nullable LocalDate birthDate,
        Residence residence,
        Registration registration,
        String idLast4,
        String driversLicense,
        String party,
        @Nullable LocalDate partySince,
        YesNo idRequired,
        YesNo numberMatched,
        @Nullable LocalDate lastVotedOn,
        String formerName,
        boolean confidential,
        String mailAddress,
        String language) {

    /** Where the roll says the voter lives, and the precinct part it put the address in. */
    public record Residence(
            String houseNumber, String street, String unit, String city, String zip, String precinct, String split) {

        public Address address() {
            return new Address((houseNumber + " " + street).strip(), unit, city, zip);
        }
    }

    /**
     * How and when the voter registered. {@code registeredOn} is the date the law tests for the channel (postmark,
     * submission, acceptance or receipt), {@code receivedOn} the day the paper reached the office.
     */
    public record Registration(
            @Nullable LocalDate registeredOn,
            @Nullable RegistrationChannel channel,
            @Nullable LocalDate receivedOn,
            RollStatus status,
            String statusReason,
            @Nullable LocalDate statusOn,
            @Nullable LocalDate confirmationSentOn,
            Entitlement entitlement) {}
}
