-- The register of printed sheets: what stands on each, who printed it when; and which of them somebody took from the wall.
CREATE TABLE printed_sheet (
    id            VARCHAR(12)              NOT NULL,
    room          VARCHAR(32)              NOT NULL,
    version       INTEGER                  NOT NULL,
    digest        VARCHAR(71)              NOT NULL,
    equipment     INTEGER                  NOT NULL,
    paper         VARCHAR(10)              NOT NULL,
    patient_group VARCHAR(32),
    region        VARCHAR(32),
    printed_at    TIMESTAMP WITH TIME ZONE NOT NULL,
    printed_by    VARCHAR(120)             NOT NULL,
    printed_name  VARCHAR(120)             NOT NULL,
    role          VARCHAR(40)              NOT NULL,
    CONSTRAINT printed_sheet_pk PRIMARY KEY (id),
    CONSTRAINT printed_sheet_id_whole CHECK (CHAR_LENGTH(id) = 12),
    CONSTRAINT printed_sheet_of_version FOREIGN KEY (room, version) REFERENCES chart_version (room, number),
    CONSTRAINT printed_sheet_for_equipment FOREIGN KEY (room, equipment) REFERENCES equipment_revision (room, revision)
);

COMMENT ON TABLE printed_sheet IS 'append-only: what was printed stays printed';

CREATE INDEX printed_sheet_newest ON printed_sheet (printed_at, id);
CREATE INDEX printed_sheet_room ON printed_sheet (room, printed_at, id);

CREATE TABLE sheet_taken_down (
    sheet      VARCHAR(12)              NOT NULL,
    taken_at   TIMESTAMP WITH TIME ZONE NOT NULL,
    taken_by   VARCHAR(120)             NOT NULL,
    CONSTRAINT sheet_taken_down_pk PRIMARY KEY (sheet),
    CONSTRAINT sheet_taken_down_known FOREIGN KEY (sheet) REFERENCES printed_sheet (id)
);

COMMENT ON TABLE sheet_taken_down IS 'append-only: once taken down, a sheet is not hung again';
