package org.proviso.journey;

import java.util.function.Supplier;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.act.ActResult;
import org.proviso.database.TestOffice;
import org.proviso.review.EnvelopeCase;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;

/** The people of a small office: two reviewers, two supervisors, a board of three, a release team and intake. */
public record Office(TestOffice services) {

    public static Office staffed(TestOffice services) {
        Staff.hire(services, "ada", Role.REVIEWER);
        Staff.hire(services, "ben", Role.REVIEWER);
        Staff.hire(services, "carl", Role.SUPERVISOR);
        Staff.hire(services, "dora", Role.SUPERVISOR);
        Staff.hire(services, "eve", Role.DECIDER);
        Staff.hire(services, "fay", Role.DECIDER);
        Staff.hire(services, "gil", Role.DECIDER);
        Staff.hire(services, "hal", Role.RELEASE_TEAM);
        Staff.hire(services, "ida", Role.RELEASE_TEAM);
        Staff.hire(services, "jon", Role.INTAKE);
        return new Office(services);
    }

    public <T> T the(Class<T> service) {
        return services.the(service);
    }

    /** Does something as one of the staff. */
    public static <T> T as(String name, Supplier<T> act) {
        SecurityContext before = SecurityContextHolder.getContext();
        Staff.signOut();
        Staff.signIn(name);
        try {
            return act.get();
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }

    public static EnvelopeCase accepted(ActResult<EnvelopeCase> outcome) {
        if (outcome instanceof ActResult.Accepted<EnvelopeCase> done) {
            return done.now();
        }
        throw new AssertionError("refused: " + ((ActResult.Refused<EnvelopeCase>) outcome).words());
    }
}
