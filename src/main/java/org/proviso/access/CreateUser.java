package org.proviso.access;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Set;

/** A new account; the party may be empty, and matters where teams must be of two parties. */
public record CreateUser(
        @Pattern(regexp = "[a-z][a-z0-9.-]{1,59}") String userName,
        @NotBlank @Size(max = 120) String fullName,
        @NotNull @Size(max = 40) String party,
        @NotEmpty Set<Role> roles) {}
