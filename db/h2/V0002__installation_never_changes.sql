-- Rows of the installation are never changed or removed. An administrator's TRUNCATE passes a trigger on H2; the
-- application's user has no right to it.
CREATE TRIGGER installation_append_only
    BEFORE UPDATE, DELETE ON installation
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
