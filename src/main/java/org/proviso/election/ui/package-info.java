/** The page of the rules in force, and the line that says how far a load is. */
@NullMarked
package org.proviso.election.ui;

import org.jspecify.annotations.NullMarked;
