-- What a room's workstation shows instead of a person. Only SHA-256 of the secret is kept. Tokens are revoked, never removed.
CREATE TABLE room_token (
    id         BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,
    room       VARCHAR(64)              NOT NULL,
    label      VARCHAR(120)             NOT NULL,
    token_hash VARCHAR(64)              NOT NULL,
    issued_at  TIMESTAMP WITH TIME ZONE NOT NULL,
    issued_by  VARCHAR(120)             NOT NULL,
    revoked_at TIMESTAMP WITH TIME ZONE,
    revoked_by VARCHAR(120),
    CONSTRAINT room_token_pk PRIMARY KEY (id),
    CONSTRAINT room_token_unique UNIQUE (token_hash),
    CONSTRAINT room_token_hashed CHECK (CHAR_LENGTH(token_hash) = 64),
    CONSTRAINT room_token_revoked_by_somebody CHECK ((revoked_at IS NULL) = (revoked_by IS NULL))
);
