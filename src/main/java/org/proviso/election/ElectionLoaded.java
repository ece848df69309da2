package org.proviso.election;

import org.proviso.files.ElectionFolder;

/**
 * An election's own tables are written and the other rooms take their part of the folder, in the same transaction: if
 * one of them fails, nothing was loaded.
 */
public record ElectionLoaded(String electionId, ElectionFolder folder) {}
