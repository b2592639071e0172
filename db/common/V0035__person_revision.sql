-- Counts every change of an account, so that who decides on what they saw changes nothing newer.
ALTER TABLE person ADD COLUMN revision INTEGER DEFAULT 1 NOT NULL;
ALTER TABLE person ADD CONSTRAINT person_revision_positive CHECK (revision > 0);
