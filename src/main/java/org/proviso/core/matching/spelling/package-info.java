/**
 * How names, addresses and numbers are read and compared: parsing, normal forms, and likeness of two spellings.
 * Nothing here knows a voter or an envelope.
 */
@NullMarked
package org.proviso.core.matching.spelling;

import org.jspecify.annotations.NullMarked;
