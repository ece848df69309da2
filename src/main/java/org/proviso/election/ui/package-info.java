/** What the pages ask of the elections that the office holds. */
@NullMarked
package org.proviso.election.ui;

import org.jspecify.annotations.NullMarked;
