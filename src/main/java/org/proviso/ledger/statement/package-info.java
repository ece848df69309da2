/**
 * The client through which every store speaks to the database: keys and codes are written as their text, and read back as
 * keys. It knows no table.
 */
@NullMarked
package org.proviso.ledger.statement;

import org.jspecify.annotations.NullMarked;
