-- One row per sign-in. Only SHA-256 of the two tokens is kept, as 64 hexadecimal digits.
CREATE TABLE sign_in_session (
    id           BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,
    person_id    BIGINT                   NOT NULL,
    token_hash   VARCHAR(64)              NOT NULL,
    csrf_hash    VARCHAR(64)              NOT NULL,
    started_at   TIMESTAMP WITH TIME ZONE NOT NULL,
    last_seen_at TIMESTAMP WITH TIME ZONE NOT NULL,
    ends_at      TIMESTAMP WITH TIME ZONE NOT NULL,
    ended_at     TIMESTAMP WITH TIME ZONE,
    CONSTRAINT sign_in_session_pk PRIMARY KEY (id),
    CONSTRAINT sign_in_session_person_fk FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT sign_in_session_token_unique UNIQUE (token_hash),
    CONSTRAINT sign_in_session_token_hashed CHECK (CHAR_LENGTH(token_hash) = 64),
    CONSTRAINT sign_in_session_csrf_hashed CHECK (CHAR_LENGTH(csrf_hash) = 64),
    CONSTRAINT sign_in_session_ends_after_start CHECK (ends_at > started_at)
);

CREATE INDEX sign_in_session_person ON sign_in_session (person_id);
