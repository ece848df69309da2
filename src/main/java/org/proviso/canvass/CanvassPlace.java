package org.proviso.canvass;

import org.jspecify.annotations.Nullable;
import org.proviso.canvass.outcomes.EnvelopeGroup;
import org.proviso.core.Envelope;
import org.proviso.intake.CastEnvelope;

/** Where figures are from: a voting location, or the county as a whole (null), each group of hours apart. */
public record CanvassPlace(@Nullable String votingLocation, VotingHours hours) {

    private static final String OTHER_COUNTIES = "Other counties";
    private static final String MAIL_BALLOT_OFFICE = "Mail-ballot office";

    /** Where an envelope came from: its voting location, or the office that handed it over. */
    public static String nameOf(CastEnvelope envelope) {
        return nameOf(envelope.votingLocation(), envelope.source());
    }

    /** The same of envelopes that are counted together. */
    static String nameOf(EnvelopeGroup group) {
        return nameOf(group.votingLocation(), group.source());
    }

    private static String nameOf(String location, Envelope.Source source) {
        if (!location.isEmpty()) {
            return location;
        }
        return source == Envelope.Source.OTHER_COUNTY ? OTHER_COUNTIES : MAIL_BALLOT_OFFICE;
    }

    static CanvassPlace location(String votingLocation, VotingHours hours) {
        return new CanvassPlace(votingLocation, hours);
    }

    static CanvassPlace county(VotingHours hours) {
        return new CanvassPlace(null, hours);
    }

    public boolean isCounty() {
        return votingLocation == null;
    }

    /** Whether it is an office that hands envelopes over and sends no return. */
    public boolean isOffice() {
        return OTHER_COUNTIES.equals(votingLocation) || MAIL_BALLOT_OFFICE.equals(votingLocation);
    }

    /** Its name, as a figure is noted for it. */
    public String name() {
        return votingLocation == null ? CanvassService.COUNTY : votingLocation;
    }

    /** As it reads in a sentence: {@code Mill Pond Library}, {@code The county in extended hours}. */
    public String words() {
        return name() + hours.words();
    }
}
