/**
 * How transactions begin and end on each database: on H2 one writer at a time. It knows no table.
 */
@NullMarked
package org.proviso.ledger.transaction;

import org.jspecify.annotations.NullMarked;
