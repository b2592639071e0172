-- What this database was made for. One row, written at the first start, never changed.
CREATE TABLE installation (
    only_row   INTEGER                  NOT NULL,
    mode       VARCHAR(4)               NOT NULL,
    created_at TIMESTAMP WITH TIME ZONE NOT NULL,
    CONSTRAINT installation_pk PRIMARY KEY (only_row),
    CONSTRAINT installation_one_row CHECK (only_row = 1),
    CONSTRAINT installation_mode_known CHECK (mode IN ('demo', 'site'))
);

-- A table whose comment begins with "append-only" is granted SELECT and INSERT only.
COMMENT ON TABLE installation IS 'append-only: a demonstration never becomes a site, nor a site a demonstration';
