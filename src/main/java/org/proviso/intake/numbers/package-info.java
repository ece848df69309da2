/** Numbers that are missing or on several envelopes: which envelopes are marked, and how a person settles each. */
@NamedInterface("numbers")
@NullMarked
package org.proviso.intake.numbers;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
