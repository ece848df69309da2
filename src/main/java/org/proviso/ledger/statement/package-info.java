/**
 * The client through which every store speaks to the database: keys, codes and moments are written as their columns hold
 * them, out of records too, and read back in the same way. It knows no table.
 */
@NullMarked
package org.proviso.ledger.statement;

import org.jspecify.annotations.NullMarked;
