package org.proviso.intake.keying;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.Address;

/** An address as the voter wrote it; a part that is not there is empty. */
public record KeyedAddress(
        @NotNull @Size(max = 300) String line,
        @NotNull @Size(max = 60) String unit,
        @NotNull @Size(max = 100) String city,
        @NotNull @Size(max = 20) String zip) {

    public static final KeyedAddress NONE = new KeyedAddress("", "", "", "");

    Address address() {
        return new Address(line.strip(), unit.strip(), city.strip(), zip.strip());
    }
}
