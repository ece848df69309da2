/** The canvass and the ledger in the browser: what adds up, what does not, where envelopes went, and every act. */
@NullMarked
package org.proviso.canvass.ui;

import org.jspecify.annotations.NullMarked;
