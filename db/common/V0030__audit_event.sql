-- The ledger: one event for each business act, written in its transaction. hash is SHA-256 over the canonical JSON (RFC 8785) of
-- the event without it; prev is the hash of the event before, 64 zeros for the first.
CREATE TABLE audit_event (
    seq        BIGINT                   NOT NULL,
    at         TIMESTAMP WITH TIME ZONE NOT NULL,
    actor      VARCHAR(120)             NOT NULL,
    role       VARCHAR(40)              NOT NULL,
    action     VARCHAR(60)              NOT NULL,
    object     VARCHAR(200)             NOT NULL,
    room       VARCHAR(32),
    reason     VARCHAR(4000)            NOT NULL,
    details    VARCHAR(1000000)         NOT NULL,
    request_id VARCHAR(80),
    prev       VARCHAR(64)              NOT NULL,
    hash       VARCHAR(64)              NOT NULL,
    CONSTRAINT audit_event_pk PRIMARY KEY (seq),
    CONSTRAINT audit_event_hash_unique UNIQUE (hash),
    CONSTRAINT audit_event_prev_unique UNIQUE (prev),
    CONSTRAINT audit_event_seq_positive CHECK (seq > 0)
);

COMMENT ON TABLE audit_event IS 'append-only: the ledger';

CREATE INDEX audit_event_room ON audit_event (room, seq);
CREATE INDEX audit_event_actor ON audit_event (actor, seq);
CREATE INDEX audit_event_action ON audit_event (action, seq);
CREATE INDEX audit_event_at ON audit_event (at, seq);

-- Whoever appends holds this row until the commit, so that events stand one behind the other without a gap. Where the ledger is in
-- doubt, stopped says why, and nothing is appended, on any node, until somebody has looked into it.
CREATE TABLE audit_turn (
    id      INTEGER NOT NULL,
    stopped VARCHAR(4000),
    CONSTRAINT audit_turn_pk PRIMARY KEY (id),
    CONSTRAINT audit_turn_single CHECK (id = 1)
);

INSERT INTO audit_turn (id) VALUES (1);
