/** What the pages ask about the loaded elections. */
@NullMarked
package org.proviso.election.ui;

import org.jspecify.annotations.NullMarked;
