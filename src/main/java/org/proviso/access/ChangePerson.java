package org.proviso.access;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;

/** The name and party that a person has now, for their account in the version that was seen; the party may be empty. */
public record ChangePerson(
        @NotNull @Pattern(regexp = "[a-z][a-z0-9.-]{1,59}") String userName,
        int version,
        @NotBlank @Size(max = 120) String fullName,
        @NotNull @Size(max = 40) String party) {

    /** What is another than before, for the ledger, which has no names. */
    List<String> changed(OfficeUser before) {
        List<String> changed = new ArrayList<>();
        if (!before.fullName().equals(fullName.strip())) {
            changed.add("name");
        }
        if (!before.party().equals(party.strip())) {
            changed.add("party");
        }
        return changed;
    }
}
