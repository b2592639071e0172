package wallchart.web;

import wallchart.people.Session;

/** Who sent a request. */
sealed interface Caller {

    Access access();

    /** Whether this caller may read that room at all. */
    boolean mayRead(String room);

    /** The workstation of one room. */
    record Workstation(String room) implements Caller {
        @Override
        public Access access() {
            return Access.WORKSTATION;
        }

        @Override
        public boolean mayRead(String other) {
            return room.equals(other);
        }
    }

    /** A person with a session. */
    record Member(Session session) implements Caller {
        @Override
        public Access access() {
            return Access.of(session.person().role());
        }

        @Override
        public boolean mayRead(String room) {
            return true;
        }
    }
}
