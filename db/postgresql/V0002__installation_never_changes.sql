-- Rows of the installation are never changed or removed. The function serves every append-only table.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'rows of % are never changed or removed', TG_TABLE_NAME USING ERRCODE = '55000';
END
$$;

CREATE TRIGGER installation_append_only
    BEFORE UPDATE OR DELETE ON installation
    FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TRIGGER installation_no_truncate
    BEFORE TRUNCATE ON installation
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
