-- A page of events under any filters together costs the same however long the ledger is: one index for each combination.
CREATE INDEX audit_event_room_actor ON audit_event (room, actor, seq);
CREATE INDEX audit_event_room_action ON audit_event (room, action, seq);
CREATE INDEX audit_event_actor_action ON audit_event (actor, action, seq);
CREATE INDEX audit_event_room_actor_action ON audit_event (room, actor, action, seq);
