-- Texts made small, kept in their row.
create domain kept_bytes as bytea;
