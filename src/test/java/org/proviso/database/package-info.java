/** Runs the same tests of stores and services on H2 and on PostgreSQL, each migrated as in the office. */
@NullMarked
package org.proviso.database;

import org.jspecify.annotations.NullMarked;
