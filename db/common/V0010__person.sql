-- People who may sign in. Accounts are disabled, never removed: an id in an old record always means the same person.
CREATE TABLE person (
    id            BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,
    name          VARCHAR(40)              NOT NULL,
    printed_name  VARCHAR(120)             NOT NULL,
    role          VARCHAR(20)              NOT NULL,
    password_hash VARCHAR(200)             NOT NULL,
    created_at    TIMESTAMP WITH TIME ZONE NOT NULL,
    created_by    VARCHAR(120)             NOT NULL,
    disabled_at   TIMESTAMP WITH TIME ZONE,
    CONSTRAINT person_pk PRIMARY KEY (id),
    CONSTRAINT person_name_unique UNIQUE (name),
    CONSTRAINT person_name_lower_case CHECK (name = LOWER(name)),
    CONSTRAINT person_role_known CHECK (role IN ('radiographer', 'lead', 'physicist', 'administrator')),
    CONSTRAINT person_password_hashed CHECK (password_hash LIKE '$argon2id$%')
);
