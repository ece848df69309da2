-- Texts made small, kept in their row: a few hundred bytes, of which a large object would take more.
create domain kept_bytes as varbinary(1048576);
