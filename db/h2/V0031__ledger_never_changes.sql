-- An event is never changed or removed.
CREATE TRIGGER audit_event_append_only
    BEFORE UPDATE, DELETE ON audit_event
    FOR EACH ROW CALL 'wallchart.store.RefuseChange';
